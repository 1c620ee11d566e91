using System.CommandLine;
using Handspun.Commands;
using Handspun.Station;

// Bytes are stamped when they arrive, so a thread must be free for them even while others wait for the disk or fit a curve.
ThreadPool.GetMinThreads(out _, out var completions);
ThreadPool.SetMinThreads(ThreadsAtHand, completions);

var root = new RootCommand("Turns a wheel by hand, and the truth about the shaft is in the job: reads digital indicators, computes runout, keeps records.")
{
    ServeCommand.Create(),
    DemoCommand.Create(),
    AnalyzeCommand.Create(),
    ExportCommand.Create(),
    GaugesCommand.Create(),
    CheckCommand.Create(),
    JobsCommand.Create(),
    JobFileCommands.CreateRecords(),
    JobFileCommands.CreateReport(),
    JobFileCommands.CreateHistory(),
    JobFileCommands.CreatePack(),
    JobFileCommands.CreateUnpack(),
    PlansCommand.Create(),
};
var parsed = root.Parse(args);
try
{
    // The host of a running station deals with signals itself, and stops with grace.
    var exit = await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false, ProcessTerminationTimeout = null });
    return parsed.Errors.Count > 0 ? StationTroubleException.Usage : exit;
}
catch (StationTroubleException trouble)
{
    await Console.Error.WriteLineAsync(trouble.Message);
    return trouble.ExitCode;
}

/// <summary>The program.</summary>
internal static partial class Program
{
    private const int ThreadsAtHand = 16;
}
