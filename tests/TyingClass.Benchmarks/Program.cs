using System.Reflection;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

if (args is ["ratios"])
{
    TyingClass.Benchmarks.Ratios.Print(400);
    return;
}

// In process: the project's shared build settings (central versions, warnings as errors) do not fit the project BenchmarkDotNet would generate.
IConfig config = DefaultConfig.Instance.AddJob(Job.ShortRun.WithToolchain(new InProcessEmitToolchain(TimeSpan.FromMinutes(10), logOutput: false)));
BenchmarkSwitcher.FromAssembly(Assembly.GetExecutingAssembly()).Run(args, config);
