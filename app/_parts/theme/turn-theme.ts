"use server";

import { cookies } from "next/headers";
import { themeFrom } from "#app/_parts/theme/theme.ts";

/** Turns the remembered theme over; the first press, with nothing remembered, chooses dark. */
export async function turnTheme(): Promise<void> {
  const jar = await cookies();
  const next = themeFrom(jar.get("theme")?.value) === "dark" ? "light" : "dark";
  jar.set("theme", next, { path: "/", maxAge: 31_536_000, sameSite: "lax" });
}
