import { Component, type ReactNode } from "react";

interface Props {
  /** What is drawn, in words: `the airway`. */
  readonly what: string;
  /** When this changes, drawing is tried again. */
  readonly attempt: unknown;
  readonly children: ReactNode;
}

interface State {
  readonly problem: string | undefined;
  readonly attempt: unknown;
}

/** Draws its children; when that fails, says so in their place, and the rest of the page goes on. */
export class DrawnOrSaid extends Component<Props, State> {
  override state: State = { problem: undefined, attempt: this.props.attempt };

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { problem: error instanceof Error ? error.message : String(error) };
  }

  static getDerivedStateFromProps(props: Props, state: State): State | null {
    return props.attempt === state.attempt ? null : { problem: undefined, attempt: props.attempt };
  }

  override render(): ReactNode {
    const { problem } = this.state;
    if (problem === undefined) return this.props.children;
    return (
      <p className="failing" role="alert">
        <span aria-hidden="true">◆</span> {this.props.what} cannot be drawn: {problem}
      </p>
    );
  }
}
