using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>What wing, tail and legs have in common: stuff tied in at one place.</summary>
internal abstract class Strand : KindOfPart
{
    public sealed override bool CanHoldAir => true;

    /// <summary>Usual length.</summary>
    protected abstract Figure LengthShanks { get; }

    /// <summary>How steeply it leaves the shank, °; null along it.</summary>
    protected virtual Figure? RiseDeg => null;

    internal override bool Uses(string figure) => true;

    /// <summary>Whether stuff that is flat is tied flat.</summary>
    protected virtual bool IsFlat(Material material) => false;


    internal override ImmutableArray<string> OwnKeys => ["length", "mass", "side"];

    internal override string Instead(string key) => key == "to" ? "Say how long it is with “length” instead." : base.Instead(key);

    internal override bool MustHaveLength(PartSpec part) => part.Tied == TieDown.BothEnds;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double lengthM = part.LengthM ?? Math.Max(hook.Guesses.Of(LengthShanks) * hook.ShankM, part.ToM - part.AtM ?? 0);
        if (part.LengthM is null) log?.AddLength("length", lengthM, "usual on such a hook", LengthShanks);
        if (part.Tied != TieDown.BothEnds) return new PartDimensions(part.AtM, part.AtM, 0, lengthM, 0);

        double rearM = part.ToM ?? Math.Min(part.AtM + lengthM, hook.ShankM);
        if (part.ToM is null) log?.AddLength("rear tie", rearM, "the end of the shank, or of the strand");
        return new PartDimensions(part.AtM, rearM, 0, lengthM, 0);
    }

    internal override void Build(PartContext part, PartDraft draft)
    {
        double massKg = StrandBuilder.MassKg(part);
        part.SideSign();
        if (part.Spec.Tied != TieDown.BothEnds && part.SideOnShank() != 0 && RiseDeg is { } rise) part.Log.AddFigure("angle from the shank", rise);
        bool flat = IsFlat(part.Material);
        foreach (StrandRun run in Runs(part, massKg))
        {
            if (run.IsBound) StrandBuilder.AddBound(part, draft, run, flat);
            else StrandBuilder.AddStrand(part, draft, run, flat);
        }
    }

    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
        bool flat = IsFlat(part.Material);
        foreach (StrandRun run in Runs(part, StrandBuilder.MassKg(part with { Log = new AssumptionLog() })))
        {
            draft.AddSideForce(StrandBuilder.SideForce(part, run, flat));
        }
    }

    // The stretch between two ties and the rest, or one strand from its tie.
    private IEnumerable<StrandRun> Runs(PartContext part, double massKg)
    {
        PartDimensions d = part.Dimensions;
        int side = part.SideOnShank();
        double riseM = side * (part.Sheaths.SeatRadiusM(part.Index, d.FrontM, d.RearM) + StrandBuilder.CompactDiameterM(part, massKg) / 2);
        Vector3D frontM = new(d.FrontM, 0, riseM);
        if (part.Spec.Tied != TieDown.BothEnds)
        {
            double angleRad = side * (RiseDeg is { } usual ? part.Of(usual) : 0) * Math.PI / 180;
            return [new StrandRun(massKg, d.LengthM, frontM, StrandBuilder.Toward(angleRad, 0), IsBound: false)];
        }

        double boundM = Math.Min(d.RearM - d.FrontM, d.LengthM), freeM = d.LengthM - boundM, boundKg = massKg * boundM / d.LengthM;
        StrandRun bound = new(boundKg, boundM, frontM, Vector3D.UnitX, IsBound: true);
        return freeM > 0 ? [bound, new(massKg - boundKg, freeM, new(d.RearM, 0, riseM), StrandBuilder.Toward(0, 0), IsBound: false)] : [bound];
    }
}
