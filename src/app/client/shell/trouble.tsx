import { Component, type ReactNode } from "react";
import { Button } from "react-aria-components";

interface State {
  readonly because: string | null;
}

/** Keeps the rest of the page alive when one view fails, and says so. */
export class Trouble extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { because: null };
  static getDerivedStateFromError(error: unknown): State {
    return { because: error instanceof Error ? error.message : "unknown" };
  }
  override render(): ReactNode {
    if (this.state.because === null) return this.props.children;
    return (
      <div role="alert">
        <h1>This view did not come up.</h1>
        <p className="said">What was written is safe on this device. The cause: {this.state.because}</p>
        <p>
          <Button className="press" onPress={() => location.reload()}>
            Load the page again
          </Button>
        </p>
      </div>
    );
  }
}
