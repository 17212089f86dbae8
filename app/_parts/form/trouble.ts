/** Something that keeps a form from being saved: the box it stands at, and what to do about it. */
export interface Trouble {
  /** Name of the box. */
  readonly name: string;
  /** The box in words, for the summary. */
  readonly label: string;
  readonly says: string;
}
