using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;

namespace Handspun.Jobs.Plans.Reading;

/// <summary>Reads the limit of a step. Nobody has confirmed it for the machine that a job is about, whatever the plan says.</summary>
internal static class PlanLimit
{
    /// <summary>Reads it; null where it does not hold.</summary>
    public static Limit? Read(PlanTable table)
    {
        var bounds = LimitBounds.Read(("at_least", table.Text("at_least")), ("at_most", table.Text("at_most")));
        var source = table.Needed("source", "say where the limit comes from: the manual and its page, or that it has no source");
        var condition = LimitCondition.Read(table.Text("drive"), table.Text("age"));
        table.RefuseTheRest();
        var problem = bounds.Problem ?? condition.Problem ?? (bounds.IsEmpty ? "a limit has at_least, at_most, or both. " + LengthText.HowToWrite : null);
        if (problem is not null)
        {
            table.Complain("", problem);
            return null;
        }

        return bounds.ToLimit(source, confirmedBy: null) with { Drive = condition.Drive, Age = condition.Age };
    }
}
