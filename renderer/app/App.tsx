import { Drawing } from '../canvas/Drawing.tsx';
import { Book } from '../print/book/Book.tsx';
import { PaperDialog } from '../print/PaperDialog.tsx';
import { BudgetSheet } from '../stages/budget/BudgetSheet.tsx';
import { CableSheet } from '../stages/cables/CableSheet.tsx';
import { CheckSheet } from '../stages/check/CheckSheet.tsx';
import { KeydownStrip } from '../stages/check/KeydownStrip.tsx';
import { DetailsSheet } from '../stages/draw/DetailsSheet.tsx';
import { JoinDialog } from '../stages/draw/JoinDialog.tsx';
import { Shelf } from '../stages/draw/shelf/Shelf.tsx';
import { KindEditor } from '../stages/kinds/KindEditor.tsx';
import { PowerUpSheet } from '../stages/power-up/PowerUpSheet.tsx';
import { useResults, useStation, useView } from '../store/use-store.ts';
import { AgeContext, oldWords } from '../widgets/age-words.ts';
import './app.css';
import { Beginning } from './Beginning.tsx';
import { FindDialog } from './dialogs/FindDialog.tsx';
import { KeptDialog } from './dialogs/KeptDialog.tsx';
import { QuestionDialog } from './dialogs/QuestionDialog.tsx';
import { NotKept } from './NotKept.tsx';
import { StageRail } from './rail/StageRail.tsx';
import { ThemePicker } from './rail/ThemePicker.tsx';
import { TitleBar } from './title/TitleBar.tsx';
import { ErrorNotice } from './trouble/ErrorNotice.tsx';
import { ResultsNotice } from './trouble/ResultsNotice.tsx';

const sheets = {
  draw: DetailsSheet,
  check: CheckSheet,
  cables: CableSheet,
  budget: BudgetSheet,
  'power-up': PowerUpSheet,
};

/** One window: the drawing that never goes away, and beside it what the stage has to say. */
export function App() {
  const stage = useView((v) => v.stage);
  const empty = useStation((s) => s.units.length === 0);
  const age = useResults(oldWords);
  const Sheet = sheets[stage];
  return (
    <div className={`app stage-${stage}`}>
      <TitleBar />
      <StageRail />
      <ThemePicker />
      {stage === 'draw' && <Shelf />}
      <main className="drawing">
        <AgeContext value={age}>
          <Drawing />
        </AgeContext>
        {empty && <Beginning />}
        <NotKept />
        <div className="trouble-notices">
          <ResultsNotice />
          <ErrorNotice />
        </div>
      </main>
      <Sheet />
      {stage === 'check' && <KeydownStrip />}
      <FindDialog />
      <JoinDialog />
      <KindEditor />
      <PaperDialog />
      <Book />
      <KeptDialog />
      <QuestionDialog />
    </div>
  );
}
