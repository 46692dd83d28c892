namespace TyingClass.Balance.Fluid;

/// <summary>Density and viscosity of fresh and sea water at the pressure of the surface.</summary>
/// <remarks>EOS-80 and Sharqawy for both waters, so that nothing jumps as the salt goes to zero; the tests hold their fresh-water end against Kell and IAPWS.
/// </remarks>
public static class WaterProperties
{
    /// <summary>Water as the engine uses it.</summary>
    /// <param name="temperatureC">0 to 40 °C (ITS-90).</param>
    /// <param name="salinityKgKg">0 to 0.042 kg of salt per kg of water.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of the equation of state.</exception>
    public static Water At(double temperatureC, double salinityKgKg)
    {
        Require.InRange(temperatureC, 0, 40, nameof(temperatureC));
        Require.InRange(salinityKgKg, 0, 0.042, nameof(salinityKgKg));
        return new Water(
            DensityEos80KgM3(1.00024 * temperatureC, 1000 * salinityKgKg),
            ViscositySharqawyPaS(temperatureC, salinityKgKg));
    }

    /// <summary>Density of sea water at atmospheric pressure, kg/m³. EOS-80: UNESCO Technical Papers in Marine Science 44 (1983), pp. 15-18.</summary>
    /// <param name="temperatureC68">°C on the scale of 1968 (1.00024 times that of 1990), -2 to 40.</param>
    /// <param name="salinityPsu">Practical salinity, 0 to 42.</param>
    public static double DensityEos80KgM3(double temperatureC68, double salinityPsu)
    {
        double t = temperatureC68, s = salinityPsu;
        double pure = 999.842594 + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        double a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
        return pure + s * (a + b * Math.Sqrt(s) + 4.8314e-4 * s);
    }

    /// <summary>
    /// Viscosity of sea water, Pa·s, 0-180 °C, 0-0.15 kg/kg, ±1.5 %. Sharqawy, Lienhard and Zubair, Desalination and Water Treatment 16 (2010) 354, eqs. 22-23.
    /// </summary>
    public static double ViscositySharqawyPaS(double temperatureC, double salinityKgKg)
    {
        double t = temperatureC, s = salinityKgKg;
        double pure = 4.2844e-5 + 1 / (0.157 * (t + 64.993) * (t + 64.993) - 91.296);
        double a = 1.541 + t * (1.998e-2 - t * 9.52e-5);
        double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
        return pure * (1 + s * (a + b * s));
    }
}
