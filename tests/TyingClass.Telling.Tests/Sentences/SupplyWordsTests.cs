using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class SupplyWordsTests
{
    // A packet of 1/8 in beads says 3.2 mm; 5/64 in says 2 mm (common practice, no source). 1 in = 25.4 mm exactly.
    [Theory]
    [InlineData(SupplyKind.Bead, "bead", "brass", 3.2e-3, "bead, brass, 3.2 mm", "bead, brass, 1/8 in")]
    [InlineData(SupplyKind.Bead, "bead", "brass", 2e-3, "bead, brass, 2 mm", "bead, brass, 5/64 in")]
    [InlineData(SupplyKind.Bead, "cone", "brass", 3e-3, "cone, brass, 3 mm", "cone, brass, 0.118 in")]
    [InlineData(SupplyKind.Wire, "wraps", "lead", 0.38e-3, "wraps, lead, 0.38 mm (0.015 in)", "wraps, lead, 0.015 in")]
    public void Of_Supply_IsAskedForAsItsPacketSaysIt(SupplyKind kind, string what, string substance, double sizeM, string metric, string imperial)
    {
        Supply supply = new(kind, new SupplyItem(what) { Substance = substance, SizeM = sizeM }, 1, 0, 0, 0);

        Assert.Equal(metric, SupplyWords.Of(supply, UnitSystem.Metric));
        Assert.Equal(imperial, SupplyWords.Of(supply, UnitSystem.Imperial));
    }
}
