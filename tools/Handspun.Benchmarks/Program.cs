using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Handspun.Benchmarks;

// A share of slow answers is what counts for a store, and that the benchmark library does not tell.
if (args is ["store", .. var rest])
{
    await StoreAnswers.RunAsync(rest.Length > 0 ? int.Parse(rest[0], System.Globalization.CultureInfo.InvariantCulture) : 10_000, rest.Length > 1 ? rest[1] : null);
    return;
}

// In this process, so that a run builds nothing and works from any folder.
var config = ManualConfig.Create(DefaultConfig.Instance).AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance));
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, config);
