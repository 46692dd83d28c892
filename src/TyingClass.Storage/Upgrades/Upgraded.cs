namespace TyingClass.Storage.Upgrades;

/// <summary>A data file of an earlier version was brought up to this one at its opening.</summary>
/// <param name="BackupPath">What it was before, read back and counted.</param>
public sealed record Upgraded(int From, int To, string BackupPath);
