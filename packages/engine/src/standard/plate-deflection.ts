/**
 * Rectangular plates under even pressure: deflection in the middle is `alpha q b⁴/(E t³)`, stress `beta q b²/t²`, b the
 * short side. Ratios are long over short side; the last row is a strip. Edges simply supported: read, Poisson's ratio 0.3,
 * deflections up to half the thickness. Edges clamped: from memory.
 */
export const plateDeflection = {
  source: "roark-plates Table 11.4 case 1a; clamped edges from memory",
  supported: [
    { ratio: 1, alpha: 0.0444, beta: 0.2874 },
    { ratio: 1.2, alpha: 0.0616, beta: 0.3762 },
    { ratio: 1.4, alpha: 0.077, beta: 0.453 },
    { ratio: 1.6, alpha: 0.0906, beta: 0.5172 },
    { ratio: 1.8, alpha: 0.1017, beta: 0.5688 },
    { ratio: 2, alpha: 0.111, beta: 0.6102 },
    { ratio: 3, alpha: 0.1335, beta: 0.7134 },
    { ratio: 4, alpha: 0.14, beta: 0.741 },
    { ratio: 5, alpha: 0.1417, beta: 0.7476 },
    { ratio: Number.POSITIVE_INFINITY, alpha: 0.1421, beta: 0.75 },
  ],
  clamped: [
    { ratio: 1, alpha: 0.0138 },
    { ratio: 1.2, alpha: 0.0188 },
    { ratio: 1.4, alpha: 0.0226 },
    { ratio: 1.6, alpha: 0.0251 },
    { ratio: 1.8, alpha: 0.0267 },
    { ratio: 2, alpha: 0.0277 },
    { ratio: Number.POSITIVE_INFINITY, alpha: 0.0284 },
  ],
} as const;
