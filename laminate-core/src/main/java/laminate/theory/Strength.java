package laminate.theory;

/** The stresses at which a lamina fails: of a ply with fibre directions, of a mat, or of a core. */
public sealed interface Strength permits PlyStrength, MatStrength, CoreStrength {}
