using Handspun.Pictures.Lettering;
using Handspun.Pictures.Page;

namespace Handspun.Pictures.Report;

/// <summary>The sizes of letters in a report, in points.</summary>
internal static class Type
{
    public static readonly TextStyle Bike = new(24, Ink.Text, Strong: true);
    public static readonly TextStyle Lead = new(13, Ink.QuietText);
    public static readonly TextStyle Headline = new(16.5f, Ink.Text, Strong: true);
    public static readonly TextStyle Section = new(15, Ink.Text, Strong: true);
    public static readonly TextStyle Title = new(12, Ink.Text, Strong: true);
    public static readonly TextStyle Value = new(17, Ink.Text, Strong: true);
    public static readonly TextStyle Body = new(10, Ink.Text);
    public static readonly TextStyle Strong = new(10, Ink.Text, Strong: true);
    public static readonly TextStyle Small = new(8.5f, Ink.Text);
    public static readonly TextStyle SmallStrong = new(8.5f, Ink.Text, Strong: true);
    public static readonly TextStyle Label = new(8.5f, Ink.QuietText);
    public static readonly TextStyle Running = new(8, Ink.QuietText);
}
