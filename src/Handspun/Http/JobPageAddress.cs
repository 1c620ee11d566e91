using System.Globalization;
using Handspun.Jobs.Store.Finding;
using Microsoft.AspNetCore.WebUtilities;

namespace Handspun.Http;

/// <summary>Where a page of jobs is found.</summary>
internal static class JobPageAddress
{
    /// <summary>The address, with nothing in it that is as usual.</summary>
    /// <param name="path">Such as <c>/</c>.</param>
    /// <param name="search">The page.</param>
    public static string Of(string path, JobSearch search)
    {
        var query = new Dictionary<string, string?>();
        if (!string.IsNullOrWhiteSpace(search.Typed))
        {
            query["find"] = search.Typed.Trim();
        }

        if (search.Page > 1)
        {
            query["page"] = search.Page.ToString(CultureInfo.InvariantCulture);
        }

        if (search.PerPage != JobSearch.UsualPerPage)
        {
            query["perPage"] = search.PerPage.ToString(CultureInfo.InvariantCulture);
        }

        return QueryHelpers.AddQueryString(path, query);
    }
}
