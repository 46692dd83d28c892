using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Quantities;

public sealed class QuantityTests
{
    private static readonly SolvedFly Fly = SolvedFly.Solve(RecipeParser.Parse(Repo.Recipe("recipes/slate-minnow.fly.yaml")!).Value!);

    [Fact]
    public void All_Names_AreUniqueAndReadBack()
    {
        Assert.Equal(QuantityTable.All.Length, QuantityTable.All.Select(q => q.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        foreach (Quantity quantity in QuantityTable.All)
        {
            string name = quantity.Name.EndsWith(" of", StringComparison.Ordinal) ? quantity.Name + " cone" : quantity.Name;
            Assert.True(QuantityQuery.TryParse(name, out QuantityQuery query, out string error), error);
            Assert.Same(quantity, query.Quantity);
            Assert.Equal(name, query.Name);
        }
    }

    [Theory]
    [InlineData("pitch at 0.6 m/s when fresh on a loop knot", "pitch at 0.6 m/s when fresh on a loop knot")]
    [InlineData("Keel Height on a cinched knot at 2 ft/s", "keel height at 0.61 m/s on a cinched knot")]
    [InlineData("depth after 8 s", "depth after 8 s")]
    [InlineData("mass center, x", "mass center, x")]
    [InlineData("keel moment of dumbbell eyes", "keel moment of dumbbell eyes")]
    [InlineData("keel moment of bend", "keel moment of bend and spear")]
    [InlineData("keel moment of Bend and Spear when fresh", "keel moment of bend and spear when fresh")]
    [InlineData("mass of wing 2", "mass of wing 2")]
    public void TryParse_WithCircumstances_IsShownInOneForm(string text, string name)
    {
        Assert.True(QuantityQuery.TryParse(text, out QuantityQuery query, out string error), error);
        Assert.Equal(name, query.Name);
    }

    /// <summary>What may just be asked.</summary>
    [Theory]
    [InlineData("pitch at 0.01 m/s")]
    [InlineData("pitch at 3 m/s")]
    [InlineData("depth after 10 s")]
    [InlineData("depth after 0.1 s")]
    [InlineData("strips until back up to 50 m")]
    [InlineData("strips until back up to 0 m")]
    public void TryParse_AtTheBounds_IsTaken(string text) => Assert.True(QuantityQuery.TryParse(text, out _, out string error), error);

    [Theory]
    [InlineData("keel hight", "Did you mean “keel height”?")]
    [InlineData("mass at 0.4 m/s", "makes no difference to mass")]
    [InlineData("sink rate after 5 s", "makes no difference to sink rate")]
    [InlineData("pitch at 9 m/s", "0.01 m/s to 3 m/s")]
    [InlineData("pitch at 3.01 m/s", "0.01 m/s to 3 m/s")]
    [InlineData("pitch at 0.009 m/s", "0.01 m/s to 3 m/s")]
    [InlineData("depth after 60 s", "up to 10 s")]
    [InlineData("depth after 0 s", "up to 10 s; “0 s” is not")]
    [InlineData("strips until back up to 50.1 m", "up to 50 m; “50.1 m” is not")]
    [InlineData("pitch of the fly", "is not understood")]
    [InlineData("masses", "is not a quantity")]
    [InlineData("mass of", "Say the part")]
    [InlineData("", "is not a quantity")]
    public void TryParse_NotAQuantity_SaysWhatToWrite(string text, string advice)
    {
        Assert.False(QuantityQuery.TryParse(text, out _, out string error));
        Assert.Contains(advice, error, StringComparison.Ordinal);
    }

    // The figures worked out alone must be the figures of the full report.
    [Fact]
    public void Of_WithAndWithoutTheReport_AreTheSameFigures()
    {
        FlyFigures alone = new(Fly.Recipe), whole = Whole();
        foreach (Quantity quantity in QuantityTable.All)
        {
            QuantityQuery query = quantity.Name.EndsWith(" of", StringComparison.Ordinal) ? new(quantity, Part: "bead") : new(quantity);
            Assert.True(query.Of(alone).Equals(query.Of(whole)), quantity.Name);
        }
    }

    [Fact]
    public void Of_Figures_AreThoseOfTheReportInSI()
    {
        BalanceReport r = Fly.Report;
        FlyFigures figures = Whole();
        (string Name, double Expected)[] pairs =
        [
            ("mass", 1e-3 * r.MassG),
            ("held water", 1e-3 * r.HeldWaterG),
            ("wet weight", 1e-3 * r.WetWeightG),
            ("displaced volume", 1e-9 * r.DisplacedMm3),
            ("mass center, x", 1e-3 * r.MassCenterMm.X),
            ("center of buoyancy, z", 1e-3 * r.CenterOfBuoyancyMm.Z),
            ("balance point, x", 1e-3 * r.BalancePointMm!.Value.X),
            ("tow point, x", 1e-3 * r.TowPointMm.X),
            ("mass center, below eye", 1e-3 * (r.TowPointMm.Z - r.MassCenterMm.Z)),
            ("hang angle", r.Hang.ShankFromPlumbDeg * Math.PI / 180),
            ("level-line keel", 1e-3 * r.LevelLineKeelMm!.Value.PointDown),
            ("keel height", 1e-3 * r.Soaked.AtFishingSpeed.KeelHeightMm.PointDown!.Value),
            ("keel height when fresh", 1e-3 * r.Fresh.AtFishingSpeed.KeelHeightMm.PointDown!.Value),
            ("pitch", r.Soaked.AtFishingSpeed.PitchDeg * Math.PI / 180),
            ("lean", r.Soaked.AtFishingSpeed.LeanDeg * Math.PI / 180),
            ("drag", 1e-3 * r.Soaked.AtFishingSpeed.DragMN),
            ("sink rate", r.Soaked.Sink!.RateMS),
            ("depth after 5 s", r.Soaked.Sink.DepthAfter5sM),
            ("rides as intended", r.Soaked.Tolerance.AsIntended),
            ("righting range", r.Soaked.Roll.RangeDeg * Math.PI / 180),
        ];
        foreach ((string name, double expected) in pairs)
        {
            Assert.True(QuantityQuery.TryParse(name, out QuantityQuery query, out string error), error);
            Assert.Equal(expected, query.Of(figures)!.Value, 1e-9 * Math.Max(1e-3, Math.Abs(expected)));
        }
    }

    [Fact]
    public void Of_MassCenter_IsTheMomentsOfThePartsOverTheirMass()
    {
        FlyFigures figures = Whole();
        string[] parts = ["hook", "bead", "body", "wing"];
        double mass = parts.Sum(p => Value($"mass of {p}")), moment = parts.Sum(p => Value($"mass of {p}") * Value($"center, x of {p}"));

        Assert.Equal(Value("mass center, x"), moment / mass, 1e-9);
        Assert.Equal(moment, parts.Sum(p => Value($"mass moment of {p}")), 1e-12);

        double Value(string name) =>
            QuantityQuery.TryParse(name, out QuantityQuery query, out string error) ? query.Of(figures)!.Value : throw new InvalidOperationException(error);
    }

    [Fact]
    public void Of_KeelMomentOfHook_IsTheSumOfItsNamedPieces()
    {
        FlyFigures figures = new(Fly.Recipe);

        Assert.Equal(Value("keel moment of hook"), Value("keel moment of hook eye") + Value("keel moment of shank") + Value("keel moment of bend and spear"),
            1e-12);

        double Value(string name) =>
            QuantityQuery.TryParse(name, out QuantityQuery query, out string error) ? query.Of(figures)!.Value : throw new InvalidOperationException(error);
    }

    [Fact]
    public void Of_SpeedOfItsOwn_DiffersFromTheRecipes()
    {
        FlyFigures figures = Whole();

        Assert.True(QuantityQuery.TryParse("pitch at 1.5 m/s", out QuantityQuery fast, out _));
        Assert.True(QuantityQuery.TryParse("pitch", out QuantityQuery own, out _));

        // Common practice, no source: pulled faster, a fly trails flatter.
        Assert.True(Math.Abs(fast.Of(figures)!.Value) < Math.Abs(own.Of(figures)!.Value));
    }

    [Theory]
    [InlineData("mass", 0.25e-3, "0.25 g", "0.25 g")]
    [InlineData("keel height", -0.9e-3, "−0.9 mm", "−0.035 in")]
    [InlineData("pitch", 0.5235987755982988, "30°", "30°")]
    [InlineData("rides as intended", 0.9, "90 %", "90 %")]
    [InlineData("parts", 3.0, "3", "3")]
    [InlineData("lean", 1e-12, "0°", "0°")]
    public void Say_Value_InBothSystems(string name, double si, string metric, string imperial)
    {
        Quantity quantity = QuantityTable.Find(name)!;

        Assert.Equal(metric, quantity.Say(si, UnitSystem.Metric));
        if (name != "mass") Assert.Equal(imperial, quantity.Say(si, UnitSystem.Imperial));
    }

    // The report first: the figures then come out of it.
    private static FlyFigures Whole()
    {
        FlyFigures figures = new(Fly.Recipe);
        _ = figures.Report;
        return figures;
    }
}
