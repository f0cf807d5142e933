/** m: an inch, exactly. Tables of inches are quoted with it; all else takes it from the quantities. */
export const inch = 0.0254;
