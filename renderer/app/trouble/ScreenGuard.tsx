import { Component, type ReactNode } from 'react';
import { Rescue } from './Rescue.tsx';

interface Props {
  children: ReactNode;
}

interface State {
  readonly broken: { readonly thrown: unknown } | null;
}

/** Where a part of the screen throws while it is drawn, the way to what matters: saving. React asks for a class. */
export class ScreenGuard extends Component<Props, State> {
  override state: State = { broken: null };

  static getDerivedStateFromError(thrown: unknown): State {
    return { broken: { thrown } };
  }

  override render() {
    const { broken } = this.state;
    if (!broken) return this.props.children;
    return <Rescue thrown={broken.thrown} onAgain={() => this.setState({ broken: null })} />;
  }
}
