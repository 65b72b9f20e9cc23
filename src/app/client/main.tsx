import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "@fontsource-variable/literata/opsz.css";
import "@fontsource-variable/atkinson-hyperlegible-next";
import "./style/tokens.css";
import "./style/base.css";
import "./style/controls.css";
import "./style/shell.css";
import { watchNetwork } from "./record/outbox.ts";
import "./record/stored-session.ts";
import { App } from "./shell/app.tsx";
import { startTheme } from "./shell/theme.ts";

startTheme();
watchNetwork();
const root = document.getElementById("page");
if (root !== null)
  createRoot(root).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
