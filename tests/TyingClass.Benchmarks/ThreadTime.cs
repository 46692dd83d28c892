using System.Runtime.InteropServices;

namespace TyingClass.Benchmarks;

/// <summary>How long this thread has had a processor. Elsewhere than on Linux: the whole process, which compiling and collecting add to.</summary>
internal static partial class ThreadTime
{
    // CLOCK_THREAD_CPUTIME_ID of Linux.
    private const int OfThread = 3;

    public static double Ms
    {
        get
        {
            if (!OperatingSystem.IsLinux() || GetTime(OfThread, out Timespec time) != 0) return Environment.CpuUsage.TotalTime.TotalMilliseconds;
            return 1e3 * time.Seconds + 1e-6 * time.Nanoseconds;
        }
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct Timespec
    {
        public nint Seconds;
        public nint Nanoseconds;
    }

    [DllImport("libc", EntryPoint = "clock_gettime")]
    private static extern int GetTime(int clock, out Timespec time);
}
