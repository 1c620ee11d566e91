using Handspun.Gauges.Journal;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Profiles;
using Handspun.Gauges.Readings;

namespace Handspun.Broker;

/// <summary>The one door in the station's own topics: index pulses from a sensor on the broker, for a gauge whose profile asks for them.</summary>
internal sealed class PulseInlet(GaugeRoster gauges, ILogger<PulseInlet> logger)
{
    /// <summary>Takes a message for a pulse, stamped now; what it says does not matter.</summary>
    /// <param name="topic">Where it was published.</param>
    /// <param name="retained">Whether the broker is to keep it: a pulse that is kept would come again.</param>
    /// <returns>False where no gauge takes pulses there, so that whoever sent it must be told.</returns>
    public bool TryTake(string topic, bool retained)
    {
        if (retained || !Topics.TryReadIndex(topic, out var name) || gauges.Find(name) is not { Setup.Profile.Index.Source: IndexSource.Mqtt } gauge)
        {
            return false;
        }

        try
        {
            gauge.Pulse(IndexSource.Mqtt);
        }
        catch (JournalException e)
        {
            PulseInletLog.NotJournalled(logger, name, e);
        }

        return true;
    }
}

internal static partial class PulseInletLog
{
    [LoggerMessage(4201, LogLevel.Error, "An index pulse for gauge {Gauge} came over the broker and cannot be journalled")]
    public static partial void NotJournalled(ILogger logger, GaugeName gauge, Exception e);
}
