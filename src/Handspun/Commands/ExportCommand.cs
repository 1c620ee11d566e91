using System.CommandLine;
using System.Text.Json;
using Handspun.Export;
using Handspun.Gauges.Journal;
using Handspun.Gauges.Profiles;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Commands;

/// <summary><c>handspun export</c>: the readings of a record or a journal, for other programs.</summary>
internal static class ExportCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var source = new Argument<string>("RECORD") { Description = "A record's name, or the file of a journal, packed or plain." };
        var format = new Option<string>("--format") { Description = "'csv' (which analyze reads) or 'json'.", HelpName = "FORMAT", DefaultValueFactory = _ => "csv" };
        format.AcceptOnlyFromAmong("csv", "json");
        var output = new Option<string?>("--output") { Description = "The file to write; otherwise the terminal.", HelpName = "FILE" };
        var data = new Option<string>("--data") { Description = "The folder in which the record lies.", HelpName = "DIR", DefaultValueFactory = _ => DataFolder.Default };
        var command = new Command("export", "Write a record's readings, index pulses and marks as CSV or JSON: lengths in millimetres, times in seconds from the capture's start.") { source, format, output, data };
        command.SetAction((parsed, _) =>
        {
            var capture = Read(PathOf(parsed.GetRequiredValue(source), parsed.GetRequiredValue(data)));
            var asJson = parsed.GetValue(format) == "json";
            if (parsed.GetValue(output) is not { } file)
            {
                Write(capture, asJson, Console.Out);
                return Task.FromResult(0);
            }

            try
            {
                using var into = new StreamWriter(file);
                Write(capture, asJson, into);
                return Task.FromResult(0);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new StationTroubleException($"{file} cannot be written ({e.Message}): give another file with --output.");
            }
        });
        return command;
    }

    // A name of a record has no folder in it, so it cannot lead out of the records.
    private static string PathOf(string source, string data)
    {
        if (File.Exists(source))
        {
            return source;
        }

        var record = Path.GetFileName(source) == source ? DataFolder.LookInto(data).JournalOf(source) : null;
        return File.Exists(record)
            ? record
            : throw new StationTroubleException($"There is no record and no file '{source}': the job's page names its records; another data folder is given with --data.");
    }

    private static CaptureExport Read(string path)
    {
        try
        {
            return CaptureExport.Read(path);
        }
        catch (Exception e) when (e is JournalException or ProfileException)
        {
            throw new StationTroubleException($"{path} cannot be exported: {e.Message}");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StationTroubleException($"{path} cannot be read ({e.Message}): mend its rights or give another.");
        }
    }

    private static void Write(CaptureExport capture, bool asJson, TextWriter into)
    {
        if (asJson)
        {
            into.WriteLine(JsonSerializer.Serialize(capture, WireJson.Options));
        }
        else
        {
            CsvExport.Write(capture, into);
        }
    }
}
