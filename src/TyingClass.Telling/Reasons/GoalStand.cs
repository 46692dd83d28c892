namespace TyingClass.Telling.Reasons;

/// <summary>Where a change has brought a figure, against what was asked of it.</summary>
public enum GoalStand
{
    Met,

    /// <summary>The right way, and not there yet.</summary>
    Short,

    /// <summary>Through what was asked and out on the other side, or out of it.</summary>
    Beyond,

    /// <summary>Further from it than before.</summary>
    Away,
}

public static class GoalStands
{
    /// <param name="low">Of what was asked; infinite where it has no such end.</param>
    public static GoalStand Of(double? from, double? to, double low, double high) => (from, to) switch
    {
        (_, { } now) when now >= low && now <= high => GoalStand.Met,
        ({ } was, { }) when was >= low && was <= high => GoalStand.Beyond,
        ({ } was, { } now) when was < low && now < low => now > was ? GoalStand.Short : GoalStand.Away,
        ({ } was, { } now) when was > high && now > high => now < was ? GoalStand.Short : GoalStand.Away,
        ({ }, { }) => GoalStand.Beyond,
        _ => GoalStand.Away,
    };
}
