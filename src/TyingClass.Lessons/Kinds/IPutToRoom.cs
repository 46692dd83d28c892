using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;

namespace TyingClass.Lessons.Kinds;

/// <summary>A kind whose exercises can be put to a whole room: everyone takes one of the choices, then the right one is revealed.</summary>
public interface IPutToRoom
{
    /// <summary>What is asked above the choices.</summary>
    string RoomPrompt { get; }

    ImmutableArray<string> RoomChoices(Exercise exercise);

    /// <summary>The right one of the choices and what is said of it; null when no single one is right.</summary>
    (string Choice, Feedback Feedback)? RoomAnswer(Exercise exercise);
}
