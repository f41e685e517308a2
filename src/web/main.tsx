import { render } from "preact";
import { App } from "./app.tsx";
import { followAddress } from "./state/route.ts";
import { desk } from "./state/the-desk.ts";

followAddress();
desk.open();
const root = document.getElementById("app");
if (root !== null) render(<App />, root);
