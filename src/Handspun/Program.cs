using System.CommandLine;
using Handspun.Commands;
using Handspun.Station;

var root = new RootCommand("Turns a wheel by hand, and the truth about the shaft is in the job: reads digital indicators, computes runout, keeps records.")
{
    ServeCommand.Create(),
    DemoCommand.Create(),
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
