using System.Collections.Immutable;

namespace TyingClass.Storage.Evenings;

/// <summary>What the instructor wrote about one evening of a class; which lessons it teaches stands in the lessons themselves.</summary>
public sealed record EveningPlan(string ClassId, int Number)
{
    public const int MostNoteLength = 20_000;

    /// <summary>In the zone of the class.</summary>
    public DateTime? StartsLocal { get; init; }

    /// <summary>How the evening runs; Markdown.</summary>
    public string Plan { get; init; } = "";

    /// <summary>What to show and how; Markdown.</summary>
    public string Demonstrations { get; init; } = "";

    /// <summary>How many sit at the vises; null for everyone in the class.</summary>
    public int? Students { get; init; }

    /// <summary>By the fly's name, where it differs from what the lessons ask for.</summary>
    public ImmutableArray<FlyCount> Flies { get; init; } = [];

    /// <summary>0 before anything was written; goes up with each change.</summary>
    public int Version { get; init; }
}

/// <param name="Each">How many every student ties; a half where two neighbors tie one between them.</param>
/// <param name="Shown">How many the instructor ties to show.</param>
public sealed record FlyCount(string Name, double Each, int Shown);

/// <param name="StartsLocal">In the zone of the class; null for no date.</param>
/// <param name="Version">Of the evening as it was read.</param>
public sealed record EveningStart(int Number, DateTime? StartsLocal, int Version);
