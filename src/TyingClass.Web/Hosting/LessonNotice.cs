using System.Collections.Immutable;
using TyingClass.Lessons.Courses;

namespace TyingClass.Web.Hosting;

/// <summary>Tells whoever looks at the console what is wrong in the lessons folder: at the start, and whenever that changes.</summary>
internal sealed class LessonNotice(ICourseSource source) : IHostedService
{
    private readonly Lock _telling = new();
    private ImmutableArray<AuthorError> _told = [];

    public Task StartAsync(CancellationToken cancellationToken)
    {
        Tell();
        if (source is CourseFolder folder) folder.Changed += OnChanged;
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken)
    {
        if (source is CourseFolder folder) folder.Changed -= OnChanged;
        return Task.CompletedTask;
    }

    private void OnChanged(object? sender, EventArgs e) => Tell();

    private void Tell()
    {
        lock (_telling)
        {
            ImmutableArray<AuthorError> now = source.Current.Problems;
            if (now.SequenceEqual(_told)) return;
            Console.WriteLine(now.IsEmpty ? "The lessons folder is in order again."
                : now.All(p => p.IsShown) ? "To mend in the lessons folder (students see it as it stands):"
                : "To mend in the lessons folder (students see the last good version):");
            foreach (AuthorError problem in now)
            {
                Console.WriteLine($"  {problem}");
                if (problem.Source is { } line) Console.WriteLine($"    {line.Trim()}");
            }

            _told = now;
        }
    }
}
