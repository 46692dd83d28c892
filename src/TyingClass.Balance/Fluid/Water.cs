namespace TyingClass.Balance.Fluid;

/// <summary>The two properties of water that the balance needs.</summary>
/// <param name="DensityKgM3">kg/m³.</param>
/// <param name="ViscosityPaS">Dynamic viscosity, Pa·s.</param>
public readonly record struct Water(double DensityKgM3, double ViscosityPaS);
