import { surveyReport } from '../../core/index.ts';
import { answerQuestions } from './answer-questions.ts';

// Computes off the screen's thread: a station in, its report out.
answerQuestions(surveyReport);
