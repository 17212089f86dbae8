import type { Metadata, Viewport } from "next";
import localFont from "next/font/local";
import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { Masthead } from "#app/_parts/sheet/masthead.tsx";
import { TitleBlock } from "#app/_parts/sheet/title-block.tsx";
import { themeFrom } from "#app/_parts/theme/theme.ts";
import "#app/globals.css";
import "#app/_parts/look/sheet.css";
import "#app/_parts/look/pieces.css";
import "#app/_parts/look/forms.css";
import "#app/_parts/look/records.css";

/** Has the fractions and marks lengths are written with: ½ ⅛ ⅝ ″ ′ ± − ° ×. */
const lettering = localFont({
  src: [
    { path: "./_parts/lettering/condensed-regular.woff2", weight: "400", style: "normal" },
    { path: "./_parts/lettering/condensed-semibold.woff2", weight: "600", style: "normal" },
  ],
  variable: "--lettering-face",
  display: "swap",
});

export const metadata: Metadata = {
  title: { default: "Sternwright: will this motor suit this stern?", template: "%s · Sternwright" },
  description:
    "Tells whether an outboard motor will hang, steer and tilt on a small boat's stern, by how much, and what to cut where it will not.",
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  // The phone's keypad pushes the sheet up instead of lying over the field being filled in.
  interactiveWidget: "resizes-content",
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#fbfaf5" },
    { media: "(prefers-color-scheme: dark)", color: "#11161a" },
  ],
};

/** Every page: masthead, the sheet, title block. The reader's theme comes from a cookie, so the first paint is right. */
export default async function Layout({ children }: { children: ReactNode }) {
  const theme = themeFrom((await cookies()).get("theme")?.value);
  return (
    <html lang="en-GB" data-theme={theme} className={lettering.variable}>
      <body>
        <a className="unseen skip" href="#content">
          Skip to the sheet
        </a>
        <Masthead />
        <main className="sheet" id="content" tabIndex={-1}>
          {children}
        </main>
        <TitleBlock />
      </body>
    </html>
  );
}
