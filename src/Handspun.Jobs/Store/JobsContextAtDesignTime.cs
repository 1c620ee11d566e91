using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Handspun.Jobs.Store;

/// <summary>Gives the migration tool a context; no file is opened.</summary>
internal sealed class JobsContextAtDesignTime : IDesignTimeDbContextFactory<JobsContext>
{
    public JobsContext CreateDbContext(string[] args) =>
        new(new DbContextOptionsBuilder<JobsContext>().UseSqlite("Data Source=design-time.db").Options);
}
