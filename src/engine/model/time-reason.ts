/** What the length of a piece of work was reckoned by. */
export type TimeReason =
  /** Mass over the kilowatts that reach the pot. */
  | "burner-power"
  /** What the oven can give to what stands in it. */
  | "oven-load"
  /** Heat that has to go to the middle of a piece. */
  | "thickness"
  /** A layer in a tray that loses its heat to the air, or sets. */
  | "layer"
  /** A pot in iced water. */
  | "ice-bath"
  /** What boils away through its surface, or by the power of the burner. */
  | "surface";
