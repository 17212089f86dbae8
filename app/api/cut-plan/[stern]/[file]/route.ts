import { route } from "#app/_http/route.ts";
import { cutFile } from "#app/_parts/cut-plan/file-route.ts";

/** A stern's cut plan as a file: PDF, one sheet as SVG, or a part as DXF. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route<{ stern: string; file: string }>({
  GET: (request, { stern, file }) => cutFile(request, stern, file),
});
