import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { fail, run } from "./run.mjs";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
const usualPlaces = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** The browser that is there: CHROME_PATH, one on the search path, or one in its usual place; null when there is none. */
export const findChromium = () => {
  const named = process.env.CHROME_PATH;
  if (named !== undefined && named !== "") return existsSync(named) ? named : null;
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...usualPlaces].find((path) => existsSync(path)) ?? null;
};

/** A Chromium for the tests of the web app; installed where this is a Debian machine and we are root. */
export const ensureChromium = () => {
  const found = findChromium();
  if (found !== null) return found;
  const isRoot = typeof process.getuid === "function" && process.getuid() === 0;
  const hasApt = spawnSync("apt-get", ["--version"], { stdio: "ignore" }).status === 0;
  if (process.env.CHROME_PATH === undefined && isRoot && hasApt) {
    console.log("Installing Chromium for the tests of the web app (apt-get install chromium) …");
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    run("apt-get", ["update", "-q"], { env });
    run("apt-get", ["install", "-y", "-q", "--no-install-recommends", "chromium"], { env });
    const installed = findChromium();
    if (installed !== null) return installed;
  }
  return fail(
    "The tests of the web app need Chromium or Chrome, and none was found.\n" +
      "Debian, Ubuntu:  sudo apt-get update && sudo apt-get install -y chromium\n" +
      "macOS:           brew install --cask chromium\n" +
      "Elsewhere:       install Chrome and set CHROME_PATH to its program.",
  );
};
