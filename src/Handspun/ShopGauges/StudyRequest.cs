using Handspun.Http;
using Handspun.Jobs.ShopGauges;

namespace Handspun.ShopGauges;

/// <summary>A study: as lines, or as a table in millimetres.</summary>
internal sealed record StudyRequest(
    string? Lines = null,
    IReadOnlyList<string>? Mechanics = null,
    IReadOnlyList<string>? Parts = null,
    IReadOnlyList<IReadOnlyList<IReadOnlyList<double>>>? ValuesMm = null)
{
    /// <summary>What was typed.</summary>
    /// <exception cref="RequestSentenceException">It is no study.</exception>
    public StudySheet Read()
    {
        if (Lines is not null)
        {
            return StudyLines.Read(Lines, out var typed) is { } wrong ? throw new RequestSentenceException(wrong) : typed!;
        }

        if (Mechanics is null || Parts is null || ValuesMm is null || ValuesMm.Any(parts => parts is null || parts.Any(trials => trials is null)))
        {
            throw new RequestSentenceException($"Give lines, or mechanics, parts and values_mm by mechanic, part and trial. {StudyLines.HowToWrite}");
        }

        var sheet = new StudySheet { Mechanics = Mechanics, Parts = Parts, ValuesMillimetres = ValuesMm };
        return sheet.Problem() is { } problem ? throw new RequestSentenceException(problem) : sheet;
    }
}
