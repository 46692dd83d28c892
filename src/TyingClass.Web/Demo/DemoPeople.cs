using System.Collections.Immutable;

namespace TyingClass.Web.Demo;

/// <param name="Skill">Chance to be right where nothing is hard, 0 to 1.</param>
/// <param name="Diligence">Share of the homework that is done at all, 0 to 1.</param>
/// <param name="IsStuck">Never gets past the repairs and designs.</param>
internal sealed record DemoStudent(string Name, double Skill, double Diligence, bool IsStuck = false);

/// <summary>Everyone is made up; the names are plants and birds.</summary>
internal static class DemoPeople
{
    public const string ClassName = "Alder Bridge (invented)";
    public const string Instructor = "Bittern";
    public const string Mentor = "Old Heron";
    public const string Passphrase = "alder bridge demo";

    public static ImmutableArray<DemoStudent> Students { get; } =
    [
        new("Wren", 0.92, 1.00), new("Sedge", 0.85, 0.95), new("Juniper", 0.80, 0.90), new("Larch", 0.75, 0.95),
        new("Teasel", 0.70, 0.85), new("Bryony", 0.68, 0.90), new("Rowan", 0.62, 0.80), new("Tansy", 0.60, 0.90),
        new("Hazel", 0.55, 0.85), new("Moss", 0.50, 0.70), new("Fern", 0.45, 0.80, IsStuck: true), new("Clover", 0.42, 0.75),
        new("Bracken", 0.38, 0.85, IsStuck: true), new("Reed", 0.55, 0.40),
    ];
}
