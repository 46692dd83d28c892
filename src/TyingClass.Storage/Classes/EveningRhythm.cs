namespace TyingClass.Storage.Classes;

/// <summary>How the dates of a class's evenings were worked out last, to be worked out again when one changes.</summary>
/// <param name="EveryDays">From one evening to the next.</param>
/// <param name="Skipped">Days without an evening, as they were typed.</param>
public sealed record EveningRhythm(int EveryDays, string Skipped);
