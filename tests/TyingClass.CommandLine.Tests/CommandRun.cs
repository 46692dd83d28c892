using System.Diagnostics;

namespace TyingClass.CommandLine.Tests;

/// <summary>The real program in a process of its own, in an empty folder.</summary>
internal sealed record CommandRun(int ExitCode, string Output, string Errors)
{
    public static CommandRun Of(DirectoryInfo folder, params string[] arguments)
    {
        using Process process = Start(folder, arguments);
        Task<string> errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new CommandRun(process.ExitCode, output, errors.Result);
    }

    public static Process Start(DirectoryInfo folder, params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder.FullName,
            ArgumentList = { Path.Combine(AppContext.BaseDirectory, "TyingClass.CommandLine.dll") },
        };
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        return Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
    }
}
