import Link from "next/link";
import { SearchBox } from "#app/_parts/search/search-box.tsx";
import { MastheadLinks } from "#app/_parts/sheet/masthead-links.tsx";
import { ThemeSwitch } from "#app/_parts/theme/theme-switch.tsx";

/** The strip above every sheet: the house, its drawers, and the light. */
export function Masthead() {
  return (
    <header className="masthead">
      <Link className="house" href="/">
        <Mark />
        Sternwright
      </Link>
      <MastheadLinks />
      <SearchBox />
      <ThemeSwitch />
    </header>
  );
}

/** A raked transom with a motor's leg hung on it. */
function Mark() {
  return (
    <svg viewBox="0 0 32 32" aria-hidden="true">
      <path d="M3 28h17L13 8H8" fill="none" stroke="currentColor" strokeWidth="2" />
      <path d="M15 5h13M22 5l4 23" fill="none" stroke="var(--accent)" strokeWidth="3" />
      <path d="M14 31h16" stroke="currentColor" strokeWidth="1" strokeDasharray="4 2 1 2" />
    </svg>
  );
}
