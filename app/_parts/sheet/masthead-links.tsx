"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";

const drawers = [
  ["/motors", "Motors"],
  ["/sterns", "Sterns"],
  ["/measuring", "Measuring"],
  ["/checks", "Checks"],
] as const;

/** The drawers of the house; the one that is open is marked. */
export function MastheadLinks() {
  const path = usePathname();
  return (
    <nav aria-label="Main">
      {drawers.map(([href, name]) => (
        <Link key={href} href={href} aria-current={mark(path, href)}>
          {name}
        </Link>
      ))}
    </nav>
  );
}

function mark(path: string, href: string): "page" | "true" | undefined {
  if (path === href) return "page";
  return path.startsWith(`${href}/`) ? "true" : undefined;
}
