namespace TyingClass.Recipes.Parts;

/// <summary>What a part needs of the shank, and so what may lie beside it.</summary>
internal enum ShankHold
{
    /// <summary>Tied over anything and over one another; may run a little way onto the bend.</summary>
    None,

    /// <summary>Threaded on: has its stretch to itself.</summary>
    Solid,

    /// <summary>Wire wound on, one layer wholly on another if need be.</summary>
    Wound,

    /// <summary>Stands beside the shank: only the lashing in its middle needs room.</summary>
    Lashed,
}
