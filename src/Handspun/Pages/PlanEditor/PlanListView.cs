using Handspun.Pages.Plans;

namespace Handspun.Pages.PlanEditor;

/// <summary>The page with all plans.</summary>
/// <param name="Own">The shop's own.</param>
/// <param name="Shipped">Those that came along with the program.</param>
/// <param name="Form">What was typed and what is wrong.</param>
public sealed record PlanListView(IReadOnlyList<PlanLineView> Own, IReadOnlyList<PlanLineView> Shipped, FormState Form);

/// <summary>A plan in the list.</summary>
/// <param name="Code">The plan in addresses.</param>
/// <param name="Title">Its name.</param>
/// <param name="About">What it is for, and how many steps it has.</param>
/// <param name="Problems">What is wrong with it, one sentence each; empty where it holds.</param>
public sealed record PlanLineView(string Code, string Title, string About, IReadOnlyList<string> Problems);
