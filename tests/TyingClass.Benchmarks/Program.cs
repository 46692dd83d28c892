using System.Globalization;
using System.Reflection;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using TyingClass.Benchmarks;

// Class pages under load, and a seeded folder to look at: no micro-benchmarks.
if (args is ["class-load", var measured]) return await ClassLoad.MeasureAsync(measured);
if (args is ["memory", var flies]) return await MemoryLoad.RunAsync(int.Parse(flies, CultureInfo.InvariantCulture));
if (args is ["files", var kept]) return await FileLoad.RunAsync(kept);
if (args is ["class-seed", var filled, var students])
{
    ClassLoad.Seed(filled, int.Parse(students, CultureInfo.InvariantCulture), attemptsEach: null);
    return 0;
}

if (args is ["bench", ..])
{
    return await BenchLoad.RunAsync(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 200);
}

if (args is ["doubt", ..])
{
    DoubtLoad.Print(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 5);
    return 0;
}

if (args is ["retrieve", ..])
{
    RetrieveLoad.Print(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 3);
    return 0;
}

if (args is ["reports", var reports, ..])
{
    ReportDump.Write(reports, 400);
    return 0;
}

if (args is ["slow", ..])
{
    int[] given = [.. args.Skip(1).Select(a => int.Parse(a, CultureInfo.InvariantCulture))];
    SlowFlies.Print(given is [var thrown, ..] ? thrown : 400, given is [_, var from, ..] ? from : 0, given is [_, _, var to, ..] ? to : int.MaxValue);
    return 0;
}

if (args is ["advice", ..])
{
    AdviceLoad.Print(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 100);
    return 0;
}

if (args is ["answers", ..])
{
    AnswerLoad.Print(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 3, args.Skip(2).ToList());
    return 0;
}

if (args is ["lessons", ..]) return await LessonLoad.RunAsync(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1);

if (args is ["openings", ..]) return await OpeningLoad.RunAsync(rest: args is [_, "rest"]);

if (args is ["ratios"])
{
    Ratios.Print(400);
    return 0;
}

// In process: the project's shared build settings (central versions, warnings as errors) do not fit the project BenchmarkDotNet would generate.
IConfig config = DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(new InProcessEmitToolchain(TimeSpan.FromMinutes(10), logOutput: false)));
BenchmarkSwitcher.FromAssembly(Assembly.GetExecutingAssembly()).Run(args, config);
return 0;
