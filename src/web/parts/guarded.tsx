import { Component, type ComponentChildren } from "preact";

type Props = { readonly children: ComponentChildren };

/** A fault in drawing one screen leaves the menu, and the words in the browser, as they are. */
export class Guarded extends Component<Props, { readonly fault: string | null }> {
  override state: { readonly fault: string | null } = { fault: null };

  override componentDidCatch(error: unknown): void {
    this.setState({ fault: error instanceof Error ? error.message : String(error) });
  }

  override render(): ComponentChildren {
    if (this.state.fault === null) return this.props.children;
    return (
      <div class="screen narrow">
        <h1 tabIndex={-1}>This screen could not be drawn</h1>
        <p role="alert">A fault of the program itself: {this.state.fault}. Your words are not touched.</p>
      </div>
    );
  }
}
