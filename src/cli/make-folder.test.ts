import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { makeFolder } from "./make-folder.ts";
import { nodeWorld } from "./node-world.ts";

const folder = mkdtempSync(join(tmpdir(), "tamis-folder-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a folder to write in", () => {
  it("is made with those above it, and may be there already", () => {
    const deep = join(folder, "a", "b", "c");
    makeFolder(deep);
    makeFolder(deep);
    expect(existsSync(deep)).toBe(true);
  });

  it("is refused below a file, and where it is a file itself", () => {
    const file = join(folder, "file");
    writeFileSync(file, "");
    expect(() => makeFolder(join(file, "below"))).toThrow("ENOTDIR");
    expect(nodeWorld().write(join(file, "card.txt"), "words")).toBe("denied");
    expect(nodeWorld().write(join(folder, "new", "card.txt"), "words")).toBe("written");
    expect(nodeWorld().write(join(folder, "new", "card.txt"), "other words")).toBe("taken");
  });

  it.skipIf(!existsSync("/proc/self"))("is refused where the system keeps no files", () => {
    expect(() => makeFolder("/proc/no-such-place/cards")).toThrow("ENOENT");
    expect(nodeWorld().write("/proc/no-such-place/cards/card.txt", "words")).toBe("denied");
  });
});
