namespace TyingClass.Balance.Tests.Fluid;

/// <summary>Published formulas that the engine does not use: what it does use is held against them.</summary>
internal static class Published
{
    /// <summary>Density of air-free fresh water, kg/m³, 0-100 °C. Kell, J. Chem. Eng. Data 20 (1975) 97, eq. 16.</summary>
    public static double DensityKellKgM3(double temperatureC)
    {
        double t = temperatureC;
        return (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12)))))
            / (1 + 16.879850e-3 * t);
    }

    /// <summary>Viscosity of fresh water at 0.1 MPa, Pa·s, 253-383 K. IAPWS SR6-08 (2008), eq. 7.</summary>
    public static double ViscosityIapwsPaS(double temperatureC)
    {
        double r = (temperatureC + 273.15) / 300;
        return 1e-6 * (280.68 * Math.Pow(r, -1.9) + 511.45 * Math.Pow(r, -7.7)
            + 61.131 * Math.Pow(r, -19.6) + 0.45903 * Math.Pow(r, -40.0));
    }

    /// <summary>Re up to 2.6·10⁵. Haider and Levenspiel, Powder Technology 58 (1989) 63.</summary>
    public static double HaiderLevenspiel(double reynolds) =>
        24 / reynolds * (1 + 0.1806 * Math.Pow(reynolds, 0.6459)) + 0.4251 / (1 + 6880.95 / reynolds);

    /// <summary>Re up to 3.38·10⁵, the standard drag curve in pieces. Clift, Grace and Weber, Bubbles, Drops and Particles (1978), table 5.2.</summary>
    public static double CliftGraceWeber(double reynolds)
    {
        double w = Math.Log10(reynolds);
        return reynolds switch
        {
            < 0.01 => 3.0 / 16 + 24 / reynolds,
            <= 20 => 24 / reynolds * (1 + 0.1315 * Math.Pow(reynolds, 0.82 - 0.05 * w)),
            <= 260 => 24 / reynolds * (1 + Math.Pow(10, -0.7133 + 0.6305 * w)),
            <= 1500 => Math.Pow(10, 1.6435 + w * (-1.1242 + 0.1558 * w)),
            <= 1.2e4 => Math.Pow(10, -2.4571 + w * (2.5558 + w * (-0.9295 + 0.1049 * w))),
            <= 4.4e4 => Math.Pow(10, -1.9181 + w * (0.6370 - 0.0636 * w)),
            _ => Math.Pow(10, -4.3390 + w * (1.5809 - 0.1546 * w)),
        };
    }
}
