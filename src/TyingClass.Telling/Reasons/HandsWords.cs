namespace TyingClass.Telling.Reasons;

/// <summary>A tyer's slips in words.</summary>
public static class HandsWords
{
    /// <summary>"the dumbbell eyes set a little to one side".</summary>
    public static string Of(ReasonShare share)
    {
        ArgumentNullException.ThrowIfNull(share);
        string part = $"the {share.What.Word}";
        return share.Error switch
        {
            HandsError.Aside => $"{part} set a little to one side",
            HandsError.Clocked => $"{part} turned a little about the shank",
            HandsError.Along => $"{part} tied a little too far forward or back",
            HandsError.Mass => $"{part} a little heavier or lighter than meant",
            HandsError.Air => $"{part} holding more or less air than meant",
            _ => $"{part} tied a little off",
        };
    }
}
