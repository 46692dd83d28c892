using TyingClass.Storage;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Patterns;

namespace TyingClass.Web.Tests.Features;

/// <summary>The two classes, with what Wren had kept so far put into the trash: a story that begins from nothing.</summary>
internal static class EmptyShelves
{
    public static async Task<TwoClasses> OpenAsync()
    {
        TwoClasses two = await TwoClasses.OpenAsync();
        ClassStore store = two.Room.Store;
        foreach (Pattern pattern in store.Patterns.Of(two.Wren.Id)) store.Patterns.Trash(pattern.Id, two.Wren.Id);
        foreach (LogEntry entry in store.BenchLog.Of(two.Wren.Id)) store.BenchLog.Trash(entry.Id, two.Wren.Id);
        return two;
    }
}
