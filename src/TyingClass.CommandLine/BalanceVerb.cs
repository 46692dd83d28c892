using System.CommandLine;
using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Reports;
using TyingClass.Telling.Sentences;

namespace TyingClass.CommandLine;

/// <summary>balance FILE [--json] [--units metric|imperial]: the full report of one recipe.</summary>
internal static class BalanceVerb
{
    public static Command Command() => new FlyVerb("balance", "The full report: what the fly would do, fresh and soaked, and why.")
    {
        FileHelp = "A recipe, *.fly.yaml.",
        JsonHelp = "Print one JSON object instead of text.",
        Solve = recipe => SolvedFly.Solve(recipe),
        Json = fly => BalanceJson.Write(fly),
        Text = WriteText,
        IsWell = fly => fly.Report.Verdict.Kind == VerdictKind.RidesAsIntended,
    }.Command();

    private static void WriteText(SolvedFly fly, UnitSystem units, TextWriter output)
    {
        BalanceReport r = fly.Report;
        output.WriteLine(fly.Recipe.Name);
        output.WriteLine(VerdictSentence.Of(r, units));
        output.WriteLine(CauseSentence.Of(fly, units));
        WriteDoubt(fly.Doubt, units, output);
        output.WriteLine();
        output.WriteLine(
            $"mass                 {Mass(Magnitudes.Mass, r.MassG)} dry, {Mass(Magnitudes.MassWithHeldWater, r.Casting.WetG)} with the water it holds");
        output.WriteLine($"weight in water      {Mass(Magnitudes.WetWeight, r.WetWeightG)} soaked");
        output.WriteLine($"mass center          {Place(r.MassCenterMm.X)} behind the front of the shank, {Place(r.MassCenterMm.Z)} above it");
        output.WriteLine($"tow point            {Place(r.TowPointMm.X)} behind the front of the shank, {Place(r.TowPointMm.Z)} above it");
        output.WriteLine($"hangs                shank {Magnitudes.HangAngle.Say(Si.Deg(r.Hang.ShankFromPlumbDeg), units)} from plumb");
        foreach (StateReport s in r.States) WriteState(s, r, units, output);
        output.WriteLine();
        foreach (SaidFinding finding in r.Findings.Select(f => FindingSentence.Say(f, r, units))) output.WriteLine($"{finding.Code}: {finding.Text}");
        output.WriteLine();
        output.WriteLine("Assumed, because the recipe does not say:");
        foreach (Recipes.Catalogue.Assumption a in fly.Built.Assumed) output.WriteLine($"  {a.What}: {WrittenFigures.Restate(a.Value, units)} ({a.Why})");

        string Mass(Magnitude what, double g) => what.Say(Si.G(g), units);
        string Place(double mm) => Magnitudes.Place.Say(Si.Mm(mm), units);
    }

    private static void WriteDoubt(DoubtReport doubt, UnitSystem units, TextWriter output)
    {
        output.WriteLine(DoubtSentence.Of(doubt));
        foreach (SaidRange range in DoubtSentence.Ranges(doubt, units)) output.WriteLine($"  {range.What.Name,-18} {range.Text} in nine draws of ten");
        if (DoubtSentence.Mostly(doubt) is { } mostly) output.WriteLine($"  {mostly}");
    }

    private static void WriteState(StateReport s, BalanceReport r, UnitSystem units, TextWriter output)
    {
        ToleranceReport t = s.Tolerance;
        string interval = $"{Magnitudes.ShareInterval.Number(t.AsIntendedLow, units)} to {Magnitudes.ShareInterval.Say(t.AsIntendedHigh, units)}";
        output.WriteLine();
        output.WriteLine($"{FlyWords.State(s).ToUpperInvariant()}: {FlyWords.Verdict(s.Verdict.Kind)}");
        output.WriteLine($"  level-line keel    {Magnitudes.LevelLineKeel.Say(Si.Mm(s.LevelLineKeelMm?.For(r.Intent)), units)}");
        output.WriteLine($"  keel height        {Magnitudes.KeelHeight.Say(Si.Mm(s.AtFishingSpeed.KeelHeightMm.For(r.Intent)), units)}");
        output.WriteLine($"  rights itself      up to {Magnitudes.RightingRange.Say(Si.Deg(s.Roll.RangeDeg), units)} of heel{Side(s.Roll.Side)}");
        output.WriteLine($"  sinks              {Sinks(s.Sink, units)}");
        output.WriteLine(
            $"  tied {t.Flies} times    {Numbers.Percent(t.AsIntended)} as intended ({interval}), {Numbers.Percent(t.Leaning)} "
                + $"lean, {Numbers.Percent(t.Flipped)} flip");
        output.WriteLine($"  {"speed",9}{"pitch",9}{"lean",8}{"keel",12}{"line",8}");
        foreach (TowReport tow in s.Tow)
        {
            string speed = Magnitudes.FishingSpeed.Say(tow.SpeedMS, units), keel = Magnitudes.KeelHeight.Say(Si.Mm(tow.KeelHeightMm.For(r.Intent)), units);
            string pitch = FlyWords.Degrees(tow.PitchDeg), lean = FlyWords.Degrees(tow.LeanDeg), line = FlyWords.Degrees(tow.LineAngleDeg);
            output.WriteLine($"  {speed,9}{pitch,9}{lean,8}{(keel == Magnitude.None ? "none" : keel),12}{line,8}   {FlyWords.Verdict(tow.Verdict)}");
        }

        foreach (LedgerEntry entry in s.Ledger)
            output.WriteLine($"  {entry.Part,-18} {Magnitudes.KeelMoment.SaySigned(Si.Gmm(entry.KeelMomentGmm), units),13}");
    }

    private static string Side(HeelSide side) => side == HeelSide.Either ? "" : $" to the {side.ToString().ToLowerInvariant()}, looking the way it swims";

    private static string Sinks(SinkReport? sink, UnitSystem units) => sink is null
        ? "hardly moves"
        : $"{Magnitudes.SinkRate.Say(sink.RateMS, units)}, pitch {FlyWords.Degrees(sink.PitchDeg)}, "
            + $"{Magnitudes.Depth.Say(sink.DepthAfter5sM, units)} in 5 s. {PauseSentence.Of(sink, units)}";
}
