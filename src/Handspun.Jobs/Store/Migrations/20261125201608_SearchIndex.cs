using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Handspun.Jobs.Store.Migrations
{
    /// <inheritdoc />
    public partial class SearchIndex : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Jobs_OpenedAt_Id",
                table: "Jobs");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_OpenedAt_Id_BikeId_FindText",
                table: "Jobs",
                columns: new[] { "OpenedAt", "Id", "BikeId", "FindText" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Jobs_OpenedAt_Id_BikeId_FindText",
                table: "Jobs");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_OpenedAt_Id",
                table: "Jobs",
                columns: new[] { "OpenedAt", "Id" });
        }
    }
}
