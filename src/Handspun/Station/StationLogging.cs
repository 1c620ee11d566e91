using System.Globalization;
using Serilog;
using Serilog.Events;

namespace Handspun.Station;

/// <summary>The logs: short lines on the console, and a file a day with job, capture and gauge beside each line.</summary>
internal static class StationLogging
{
    private const string ConsoleLine = "{Timestamp:HH:mm:ss} {Level:u3} {Message:lj}{NewLine}{Exception}";
    private const string FileLine = "{Timestamp:O} {Level:u3} job={Job} capture={Capture} gauge={Gauge} {SourceContext}: {Message:lj}{NewLine}{Exception}";
    private const int DaysKept = 31;

    /// <summary>Adds the logs to a host.</summary>
    public static void AddStationLogging(this WebApplicationBuilder builder, StationOptions options) =>
        builder.Services.AddSerilog(logs => logs
            .MinimumLevel.Information()
            .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
            .MinimumLevel.Override("System", LogEventLevel.Warning)
            .MinimumLevel.Override("MQTTnet", LogEventLevel.Warning)
            .Enrich.FromLogContext()
            .WriteTo.Console(
                options.Quiet ? LogEventLevel.Error : LogEventLevel.Information,
                ConsoleLine,
                CultureInfo.InvariantCulture,
                standardErrorFromLevel: options.Quiet ? LogEventLevel.Verbose : null)
            .WriteTo.File(
                Path.Combine(options.Data.Logs, "handspun-.log"),
                outputTemplate: FileLine,
                formatProvider: CultureInfo.InvariantCulture,
                rollingInterval: RollingInterval.Day,
                retainedFileCountLimit: DaysKept));
}
