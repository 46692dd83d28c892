using System.CommandLine;
using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;

namespace TyingClass.CommandLine;

/// <summary>balance FILE [--json]: the full report of one recipe.</summary>
internal static class BalanceVerb
{
    public static Command Command()
    {
        Argument<FileInfo> file = new("FILE") { Description = "A recipe, *.fly.yaml." };
        Option<bool> json = new("--json") { Description = "Print one JSON object instead of text." };
        Command command = new("balance", "The full report: what the fly would do, fresh and soaked, and why.") { file, json };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(json), Console.Out, Console.Error));
        return command;
    }

    public static int Run(FileInfo file, bool json, TextWriter output, TextWriter errors)
    {
        if (!RecipeFile.TryRead(file, errors, out Recipe? recipe))
        {
            return ExitCodes.InputError;
        }

        SolvedFly fly = SolvedFly.Solve(recipe);
        if (json)
        {
            output.WriteLine(BalanceJson.Write(fly));
        }
        else
        {
            WriteText(fly, output);
        }

        return fly.Report.Verdict.Kind == VerdictKind.RidesAsIntended ? ExitCodes.AllIsWell : ExitCodes.FallsShort;
    }

    private static void WriteText(SolvedFly fly, TextWriter output)
    {
        BalanceReport r = fly.Report;
        Line($"{fly.Recipe.Name}");
        Line($"{r.Verdict.Text}");
        Line($"{r.Verdict.Cause}");
        Line($"");
        Line($"mass                 {r.MassG:F3} g dry, {r.Casting.WetG:F3} g with the water it holds");
        Line($"weight in water      {r.WetWeightG:F3} g soaked");
        Line($"mass center          x {r.MassCenterMm.X:F2}  z {r.MassCenterMm.Z:F2} mm from the front of the shank");
        Line($"tow point            x {r.TowPointMm.X:F2}  z {r.TowPointMm.Z:F2} mm");
        Line($"hangs                shank {r.Hang.ShankFromPlumbDeg:F1}° from plumb");
        foreach (StateReport s in r.States)
        {
            Line($"");
            Line($"{(s.State == WetState.Fresh ? "FRESH FROM THE CAST" : "SOAKED")}: {BalanceJson.Words(s.Verdict.Kind)}");
            Line($"  level-line keel    {Millimeters(s.LevelLineKeelMm?.For(r.Intent))}");
            Line($"  keel height        {Millimeters(s.AtFishingSpeed.KeelHeightMm.For(r.Intent))}");
            Line($"  rights itself      up to {s.Roll.RangeDeg:F0}° of heel");
            Line($"  sinks              {(s.Sink is { } k ? string.Create(CultureInfo.InvariantCulture, $"{k.RateMS:F2} m/s, pitch {k.PitchDeg:F0}°, {k.DepthAfter5sM:F2} m in 5 s") : "hardly moves")}");
            Line($"  tied 1000 times    {s.Tolerance.AsIntended:P0} as intended ({s.Tolerance.AsIntendedLow:P0}-{s.Tolerance.AsIntendedHigh:P0}), {s.Tolerance.Leaning:P0} lean, {s.Tolerance.Flipped:P0} flip");
            Line($"  speed m/s   pitch°   lean°   keel mm   line°");
            foreach (TowReport t in s.Tow)
            {
                Line($"  {t.SpeedMS,9:F2}{t.PitchDeg,9:F1}{t.LeanDeg,8:F1}{t.KeelHeightMm.For(r.Intent),10:F2}{t.LineAngleDeg,8:F1}   {BalanceJson.Words(t.Verdict)}");
            }

            foreach (LedgerEntry entry in s.Ledger)
            {
                Line($"  {entry.Part,-18} {entry.KeelMomentGmm,8:F3} g·mm");
            }
        }

        Line($"");
        foreach (Finding finding in r.Findings)
        {
            Line($"{finding.Code}: {finding.Text}");
        }

        Line($"");
        Line($"Assumed, because the recipe does not say:");
        foreach (Recipes.Catalogue.Assumption a in fly.Built.Assumed)
        {
            Line($"  {a.What}: {a.Value} ({a.Why})");
        }

        void Line(FormattableString text) => output.WriteLine(FormattableString.Invariant(text));
    }

    private static string Millimeters(double? value) =>
        value is { } v ? string.Create(CultureInfo.InvariantCulture, $"{v:F2} mm") : "none can be told";
}
