namespace TyingClass.Recipes.Model;

/// <summary>
/// The catalogue of the kinds of part, in the order they are listed to a tyer. Each has two files of its own: Recipes/Parts/Bead.cs
/// says all about it, Drawing/Flies/BeadArt.cs draws it (DEVELOPERS.md, "How to add").
/// </summary>
public enum PartKind
{
    Bead, Cone, DumbbellEyes, Wraps, Body, Hackle, Wing, Tail, Legs, Foam, Resin, Rattle, Rib, WeedGuard, Putty,
}
