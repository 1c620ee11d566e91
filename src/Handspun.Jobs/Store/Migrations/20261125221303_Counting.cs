using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Handspun.Jobs.Store.Migrations
{
    /// <inheritdoc />
    public partial class Counting : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Jobs_BikeId",
                table: "Jobs");

            // In place and inside the transaction; the provider would copy the whole table outside of it.
            migrationBuilder.Sql("ALTER TABLE \"Records\" DROP COLUMN \"ValueMillimetres\";");

            migrationBuilder.AddColumn<double>(
                name: "CountingMillimetres",
                table: "Points",
                type: "REAL",
                nullable: true);

            migrationBuilder.CreateIndex(
                name: "IX_Points_JobId_Code_CountingMillimetres",
                table: "Points",
                columns: new[] { "JobId", "Code", "CountingMillimetres" });

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_BikeId_OpenedAt",
                table: "Jobs",
                columns: new[] { "BikeId", "OpenedAt" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Points_JobId_Code_CountingMillimetres",
                table: "Points");

            migrationBuilder.DropIndex(
                name: "IX_Jobs_BikeId_OpenedAt",
                table: "Jobs");

            migrationBuilder.DropColumn(
                name: "CountingMillimetres",
                table: "Points");

            migrationBuilder.AddColumn<double>(
                name: "ValueMillimetres",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_BikeId",
                table: "Jobs",
                column: "BikeId");
        }
    }
}
