using System.Globalization;

namespace Handspun.Jobs.Book;

/// <summary>What a line of the book is about. Two people who write about different things are not in each other's way.</summary>
public static class Subject
{
    /// <summary>The job as a whole.</summary>
    public const string Job = "job";

    /// <summary>What all subjects that are steps begin with.</summary>
    public const string Steps = "step/";

    /// <summary>What all subjects that are findings begin with.</summary>
    public const string Findings = "finding/";

    /// <summary>A step of the plan.</summary>
    public static string Step(string code) => Steps + code;

    /// <summary>A finding, by the number of the line that noted it.</summary>
    public static string Finding(int number) => Findings + number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A part.</summary>
    public static string Part(string code) => "part/" + code;

    /// <summary>The limit of a point.</summary>
    public static string Limit(string point) => "limit/" + point;
}
