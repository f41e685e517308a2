import { byClause, type Core, choice, grown } from "./core.ts";
import { placeOf, undoTo, withReason } from "./trail.ts";

/** What a conflict taught: a clause whose first atom becomes true after going back to `level`. */
export type Lesson = { atoms: Int32Array; ints: number; level: number; levels: number };

/** Finds what a conflict teaches; kept as one object with its arrays, for it runs at every conflict. */
export type Analyser = {
  /** The lesson of the clash written in the core; null when the root itself clashes. */
  readonly learn: () => Lesson | null;
  /** The levels whose choices together force an atom that holds. */
  readonly choicesBehind: (side: number, bound: number) => readonly number[];
};

/**
 * First unique implication point over bounds, with the marks kept at places of the trail: each place remembers how
 * strong a bound is needed of it, so that an explanation may ask for less than was concluded. Then redundant atoms
 * are removed (Sörensson and Biere 2009), and of several atoms of a side only the strongest stays.
 */
export const analyserFor = (core: Core, bump: (side: number, bound: number) => void): Analyser => {
  // 0 unseen, 1 seen, 2 known to follow from what is seen, 3 known not to.
  let mark = new Uint8Array(256);
  let need = new Int32Array(256);
  let touched = new Int32Array(256);
  let touchedLength = 0;
  let lower = new Int32Array(256);
  let lowerLength = 0;
  let buffer = new Int32Array(1024);
  let strongest = new Int32Array(64);
  let strongestAt = new Int32Array(64);
  let stamp = 0;
  let levelSeen = new Int32Array(64);
  const lesson: Lesson = { atoms: new Int32Array(64), ints: 0, level: 0, levels: 0 };

  const makeRoom = (): void => {
    if (mark.length < core.length) {
      mark = new Uint8Array(core.side.length);
      need = grown(need, core.side.length);
      touched = grown(touched, core.side.length);
      lower = grown(lower, core.side.length);
    }
    if (strongest.length < core.val.length) {
      strongest = grown(strongest, core.val.length);
      strongestAt = grown(strongestAt, core.val.length);
    }
    if (levelSeen.length < core.trailAt.length) levelSeen = grown(levelSeen, core.trailAt.length);
  };

  const clear = (): void => {
    for (let k = 0; k < touchedLength; k++) mark[touched[k] as number] = 0;
    touchedLength = 0;
  };

  /** Marks where an atom came to hold; gives 1 when that is new and on the level. */
  const see = (side: number, bound: number, level: number): number => {
    const place = placeOf(core, side, bound);
    if (place < 0) return 0;
    const at = core.levelOf[place] as number;
    if (at === 0) return 0;
    if (mark[place] === 1) {
      if (bound > (need[place] as number)) need[place] = bound;
      return 0;
    }
    mark[place] = 1;
    need[place] = bound;
    touched[touchedLength++] = place;
    bump(side, bound);
    if (at === level) return 1;
    lower[lowerLength++] = place;
    return 0;
  };

  const reasonAt = (place: number, bound: number, offset: number): number => {
    const why = core.why[place] as number;
    if ((why & 3) === byClause) core.clauses[(why >> 2) + 2] = core.conflicts;
    buffer = withReason(
      core,
      core.side[place] as number,
      bound,
      why,
      buffer,
      offset,
    ) as Int32Array<ArrayBuffer>;
    return buffer[offset] as number;
  };

  /** True when what is needed of a place follows from other places that are seen. */
  const redundant = (place: number, bound: number, offset: number, depth: number): boolean => {
    if (core.why[place] === choice || depth > 60) return false;
    const ints = reasonAt(place, bound, offset);
    for (let k = 0; k < ints; k += 2) {
      const side = buffer[offset + 1 + k] as number;
      const wanted = buffer[offset + 2 + k] as number;
      const p = placeOf(core, side, wanted);
      if (p < 0 || core.levelOf[p] === 0) continue;
      const known = mark[p] as number;
      if (known === 1 && (need[p] as number) >= wanted) continue;
      if (known === 2 && (need[p] as number) >= wanted) continue;
      if (known === 3 && (need[p] as number) <= wanted) return false;
      if (levelSeen[core.levelOf[p] as number] !== stamp) return false;
      const follows = redundant(p, wanted, offset + 1 + ints, depth + 1);
      if (known === 0 || known === 2 || known === 3) {
        if (known === 0) touched[touchedLength++] = p;
        mark[p] = follows ? 2 : 3;
        need[p] = wanted;
      }
      if (!follows) return false;
    }
    return true;
  };

  const put = (place: number): void => {
    const side = core.side[place] as number;
    const bound = need[place] as number;
    if (lesson.ints + 2 > lesson.atoms.length) lesson.atoms = grown(lesson.atoms, lesson.ints + 2);
    lesson.atoms[lesson.ints++] = side ^ 1;
    lesson.atoms[lesson.ints++] = 1 - bound;
  };

  const strengthen = (place: number): void => {
    const side = core.side[place] as number;
    const bound = need[place] as number;
    if (strongestAt[side] !== stamp || bound > (strongest[side] as number)) {
      strongestAt[side] = stamp;
      strongest[side] = bound;
    }
  };

  const learn = (): Lesson | null => {
    makeRoom();
    let level = 0;
    for (let k = 0; k < core.clashLength; k += 2) {
      const place = placeOf(core, core.clash[k] as number, core.clash[k + 1] as number);
      if (place >= 0) level = Math.max(level, core.levelOf[place] as number);
    }
    if (level === 0) return null;
    undoTo(core, level);
    lowerLength = 0;
    let open = 0;
    for (let k = 0; k < core.clashLength; k += 2)
      open += see(core.clash[k] as number, core.clash[k + 1] as number, level);
    let place = core.length;
    for (;;) {
      do place--;
      while (mark[place] !== 1 || core.levelOf[place] !== level);
      open--;
      if (open === 0) break;
      const ints = reasonAt(place, need[place] as number, 0);
      for (let k = 1; k <= ints; k += 2) open += see(buffer[k] as number, buffer[k + 1] as number, level);
    }
    stamp++;
    for (let k = 0; k < lowerLength; k++) levelSeen[core.levelOf[lower[k] as number] as number] = stamp;
    let kept = 0;
    for (let k = 0; k < lowerLength; k++) {
      const p = lower[k] as number;
      if (!redundant(p, need[p] as number, 0, 0)) lower[kept++] = p;
    }
    lesson.ints = 0;
    put(place);
    strengthen(place);
    for (let k = 0; k < kept; k++) strengthen(lower[k] as number);
    lesson.level = 0;
    let second = -1;
    lesson.levels = 1;
    stamp++;
    for (let k = 0; k < kept; k++) {
      const p = lower[k] as number;
      const side = core.side[p] as number;
      // The stamp moved on by one for the levels; the strongest atoms carry the one before.
      if (strongestAt[side] === stamp - 1 && (strongest[side] as number) > (need[p] as number)) continue;
      put(p);
      const at = core.levelOf[p] as number;
      if (levelSeen[at] !== stamp) {
        levelSeen[at] = stamp;
        lesson.levels++;
      }
      if (at > lesson.level) {
        lesson.level = at;
        second = lesson.ints - 2;
      }
    }
    if (second > 2) {
      const { atoms } = lesson;
      const side = atoms[second] as number;
      const bound = atoms[second + 1] as number;
      atoms[second] = atoms[2] as number;
      atoms[second + 1] = atoms[3] as number;
      atoms[2] = side;
      atoms[3] = bound;
    }
    clear();
    return lesson;
  };

  const choicesBehind = (side: number, bound: number): readonly number[] => {
    makeRoom();
    lowerLength = 0;
    see(side, bound, -1);
    const levels: number[] = [];
    for (let place = core.length - 1; place >= 0; place--) {
      if (mark[place] !== 1) continue;
      if (core.why[place] === choice) levels.push(core.levelOf[place] as number);
      else {
        const ints = reasonAt(place, need[place] as number, 0);
        for (let k = 1; k <= ints; k += 2) see(buffer[k] as number, buffer[k + 1] as number, -1);
      }
    }
    clear();
    return levels;
  };

  return { learn, choicesBehind };
};
