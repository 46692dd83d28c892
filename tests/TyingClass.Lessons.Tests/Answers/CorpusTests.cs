using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Lessons.Tests.Answers;

/// <summary>answers.md is the specification; this only holds the program to it.</summary>
public sealed partial class CorpusTests
{
    private const int LeastAnswers = 150;
    private const int MostWords = 24;

    private static readonly Lazy<Course> Lessons = new(() =>
    {
        using CourseFolder folder = new(Repo.Lessons);
        return folder.Current;
    });

    // What a tyer calls things; every kind of part is one of them.
    private static readonly ImmutableArray<string> TyersWords =
    [
        .. Recipes.Parts.KindsOfPart.Words, "eye", "hook", "bend", "shank", "water", "air", "knot", "leader", "hands", "parts", "pulled", "ride",
        "retrieve", "count", "strip", "line",
    ];

    public static TheoryData<string> Rows => [.. AnswerRow.All.Select((row, i) => $"{i:000} {row}")];

    [Fact]
    public void Rows_OfTheCorpus_AreEnoughAndOfEveryKind()
    {
        Assert.True(AnswerRow.All.Length >= LeastAnswers, $"There are {AnswerRow.All.Length} answers.");
        Assert.Equal(
            TyingClass.Lessons.Kinds.ExerciseKinds.Words.Order(), AnswerRow.All.Select(r => Find(r).Kind.Word).Distinct().Order());
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Feedback_OnAnAnswer_SaysWhatATeacherWould(string name)
    {
        AnswerRow row = AnswerRow.All[int.Parse(name[..3], System.Globalization.CultureInfo.InvariantCulture)];
        Exercise exercise = Find(row);

        string text = row.Text(exercise);
        GradeResult grade = row.Grade(exercise, text);

        string came = !grade.IsAttempt ? "refused" : grade.AwaitsReview ? "read" : grade.Passed ? "right" : "wrong";
        Assert.Equal(row.Is.Replace("fresh ", "", StringComparison.Ordinal).Replace("half", "wrong", StringComparison.Ordinal), came);
        if (grade.Feedback is not { } feedback) return;
        string why = $"{feedback.First} {feedback.Why} {feedback.Misreading} {feedback.Remark}",
            all = $"{feedback.Reply} {why} {feedback.WhatItWouldDo} {feedback.WhereToLook} "
                + $"{string.Join(' ', feedback.Goals.Select(g => $"{g.Asked} {g.Reached}"))}";
        foreach (string wanted in row.Mentions)
        {
            (string words, string within) = OfFirst(wanted) is { } first ? (first, feedback.First ?? "") : (wanted, why);
            Assert.True(words.Split('/', StringSplitOptions.TrimEntries).Any(w => Says(within, w)), $"“{words}” is not mentioned in: {within}");
        }

        foreach (string unwanted in row.Never)
        {
            (string words, string within) = OfFirst(unwanted) is { } first ? (first, feedback.First ?? "") : (unwanted, all);
            Assert.False(words is "mm" or "g" or "°"
                ? Regex.IsMatch($"{feedback.First} {feedback.Why}", $@"[0-9]\s?{words}\b") : Says(within, words),
                $"“{words}” is said in: {within}");
        }

        // A film strip with its nose marked is the film strip still.
        string strip = feedback.Picture?.View == FlyView.NoseInPause ? $"{FlyView.Retrieved} " : "";
        string drawn = $"{strip}{feedback.Picture?.View} {feedback.Picture?.Pair} {feedback.Picture?.Part}";
        foreach (string shown in row.Drawn) Assert.True(Says(drawn, shown), $"“{shown}” is not drawn; drawn is: {drawn}");
        BeginnerCanRead(feedback.First);
        ReplyCheck.Answers(exercise, text, grade);
    }

    /// <summary>One sentence, short, one small figure at most, in a tyer's words.</summary>
    private static void BeginnerCanRead(string? first)
    {
        Assert.NotNull(first);
        Assert.EndsWith(".", first, StringComparison.Ordinal);
        Assert.DoesNotContain(". ", first, StringComparison.Ordinal);
        Assert.True(first.Split(' ').Length <= MostWords, $"{first.Split(' ').Length} words: {first}");
        string[] figures = [.. Figure().Matches(first).Select(m => m.Value)];
        Assert.True(figures.Length <= 1 && figures.All(f => f.Count(char.IsAsciiDigit) <= 2), first);
        Assert.Contains(TyersWords, word => first.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    private static Exercise Find(AnswerRow row) =>
        Lessons.Value.TryFindExercise(row.Exercise, out _, out Exercise exercise) ? exercise : throw new ArgumentException($"There is no {row.Exercise}.");

    private const string FirstOnly = "first:";

    // "first: wing" is held against the first sentence alone.
    private static string? OfFirst(string words) => words.StartsWith(FirstOnly, StringComparison.Ordinal) ? words[FirstOnly.Length..].Trim() : null;

    // As whole words, or ends of words: "wrap" is in "wraps", "g" is not in "large".
    private static bool Says(string text, string words) => Regex.IsMatch(text, $@"(?<![\p{{L}}]){Regex.Escape(words)}", RegexOptions.IgnoreCase);

    [GeneratedRegex(@"[0-9]+(?:\.[0-9]+)?")]
    private static partial Regex Figure();
}
