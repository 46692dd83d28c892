using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <param name="ToM">Its rear edge too, where that is not simply the kind's own run.</param>
internal readonly record struct UsualPlace(double AtM, string Why, double? ToM = null);

/// <summary>What is on the hook when the next part is tied in, and where there is a place for it.</summary>
internal sealed class TiedSoFar(ResolvedHook hook)
{
    // Nearer than this share of the shank counts as reached.
    private const double NearShanks = 0.1;

    private readonly List<(string Name, KindOfPart Kind, double FrontM, double RearM)> _tied = [];

    public ResolvedHook Hook => hook;

    public UsualPlace AtBend => new(hook.ShankM, "at the bend, as no place is given");

    /// <summary>Behind the beads, cones and eyes that stand one behind another from the ring.</summary>
    public UsualPlace BehindRing => Stack(lashedToo: true);

    /// <summary>As <see cref="BehindRing"/>, for what is threaded on: eyes are lashed later.</summary>
    public UsualPlace AtRing => Stack(lashedToo: false);

    /// <summary>Where the last part of the row ended; back at the ring once the row has reached the bend.</summary>
    /// <param name="coversWire">Dressing begins where the wire under it does.</param>
    public UsualPlace Next(bool coversWire)
    {
        (string name, _, _, double rearM) = _tied.LastOrDefault(t => t.Kind.IsInRow && !(coversWire && t.Kind.Hold == ShankHold.Wound));
        return name is null || rearM > (1 - NearShanks) * hook.ShankM || rearM < BehindRing.AtM
            ? BehindRing
            : new UsualPlace(rearM, $"where the {name} ends, as no place is given");
    }

    /// <summary>Over the last body, from its front to its rear.</summary>
    public UsualPlace OverBody()
    {
        (string name, _, double frontM, double rearM) = _tied.LastOrDefault(t => t.Kind is Sleeve && t.RearM > t.FrontM);
        return name is null ? Next(coversWire: true) : new UsualPlace(frontM, $"over the {name}, as no place is given", rearM);
    }

    /// <summary>0 for a part that is not there, which the parser has complained about.</summary>
    public double RearM(string name) => _tied.LastOrDefault(t => t.Name == name).RearM;

    public void Add(string name, PartSpec part)
    {
        (double frontM, double rearM) = PartExtents.Of(part, hook);
        _tied.Add((name, KindsOfPart.Of(part), frontM, rearM));
    }

    private UsualPlace Stack(bool lashedToo)
    {
        double endM = 0;
        string? last = null;
        foreach ((string name, _, double frontM, double rearM) in _tied
            .Where(t => t.Kind.Hold == ShankHold.Solid || (lashedToo && t.Kind.Hold == ShankHold.Lashed)).OrderBy(t => t.FrontM))
        {
            if (frontM - endM < NearShanks * hook.ShankM && rearM > endM) (endM, last) = (rearM, name);
        }

        return new UsualPlace(endM, last is null ? "just behind the ring, as no place is given" : $"behind the {last}, as no place is given");
    }
}
