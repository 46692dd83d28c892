namespace TyingClass.Lessons.Courses;

/// <summary>
/// The course of a lessons folder, read again whenever a file in it changes. A lesson that can no longer be read stays as it last was,
/// and <see cref="Course.Problems"/> tells its author why. Safe for many threads: readers get one whole course or the next.
/// </summary>
/// <remarks>File system events are only a nudge: they get lost on network drives and in containers, so a slow look at the folder backs them up.</remarks>
public sealed class CourseFolder : ICourseSource, IDisposable
{
    private static readonly TimeSpan Settle = TimeSpan.FromMilliseconds(150);
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(2);

    private readonly LessonFiles _files;
    private readonly KeptLessons? _kept;
    private readonly Lock _reading = new();
    private readonly ITimer _settled;
    private readonly ITimer _look;
    private readonly FileSystemWatcher? _watcher;
    private string _fingerprint;
    private Course _course;
    private bool _disposed;

    /// <summary>Reads the folder at once. A folder that is not there yet is an empty course until it appears.</summary>
    /// <param name="keptIn">A folder for the last good version of each lesson, from which a broken one is shown after a new start; null for none.</param>
    public CourseFolder(string directory, TimeProvider? time = null, string? keptIn = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(directory);
        time ??= TimeProvider.System;
        _files = new LessonFiles(Path.GetFullPath(directory));
        _fingerprint = _files.Fingerprint();
        _kept = keptIn is null ? null : new KeptLessons(Path.GetFullPath(keptIn));
        _course = CourseLoader.Load(_files, Course.Empty);
        if (_kept is not null && !_course.Problems.IsEmpty) _course = CourseLoader.Load(_files, _kept.Read());
        _course = LeadsNowhere.Told(_course, _files);
        _kept?.Keep(_files, _course);
        _settled = time.CreateTimer(_ => Reload(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _look = time.CreateTimer(_ => ReloadIfChanged(), null, Look, Look);
        _watcher = TryWatch();
    }

    /// <summary>Raised after a new course is in place, on a worker thread.</summary>
    public event EventHandler? Changed;

    public Course Current => Volatile.Read(ref _course);

    /// <summary>Reads the folder now, without waiting for the watcher.</summary>
    public void Reload()
    {
        lock (_reading)
        {
            if (_disposed) return;
            _fingerprint = _files.Fingerprint();
            Volatile.Write(ref _course, LeadsNowhere.Told(CourseLoader.Load(_files, _course), _files));
            _kept?.Keep(_files, _course);
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    public void Dispose()
    {
        lock (_reading)
        {
            _disposed = true;
        }

        _watcher?.Dispose();
        _settled.Dispose();
        _look.Dispose();
    }

    private void ReloadIfChanged()
    {
        bool changed;
        lock (_reading)
        {
            changed = !_disposed && _files.Fingerprint() != _fingerprint;
        }

        if (changed) Reload();
    }

    private FileSystemWatcher? TryWatch()
    {
        if (!System.IO.Directory.Exists(_files.Directory)) return null;
        try
        {
            FileSystemWatcher watcher = new(_files.Directory) { IncludeSubdirectories = true };
            watcher.Changed += OnEvent;
            watcher.Created += OnEvent;
            watcher.Deleted += OnEvent;
            watcher.Renamed += OnEvent;
            watcher.EnableRaisingEvents = true;
            return watcher;
        }
        catch (Exception e) when (e is IOException or PlatformNotSupportedException or ArgumentException)
        {
            return null;
        }
    }

    // Editors save in several steps; wait until they have stopped.
    private void OnEvent(object sender, FileSystemEventArgs e)
    {
        lock (_reading)
        {
            if (!_disposed) _settled.Change(Settle, Timeout.InfiniteTimeSpan);
        }
    }
}
