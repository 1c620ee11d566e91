using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Handspun.Jobs.Store.Migrations
{
    /// <inheritdoc />
    public partial class Search : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "ValueMillimetres",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "FindText",
                table: "Jobs",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "FindText",
                table: "Bikes",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "KindKey",
                table: "Bikes",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Plate",
                table: "Bikes",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "PlateKey",
                table: "Bikes",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_OpenedAt_Id",
                table: "Jobs",
                columns: new[] { "OpenedAt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Bikes_KindKey",
                table: "Bikes",
                column: "KindKey");

            migrationBuilder.CreateIndex(
                name: "IX_Bikes_PlateKey",
                table: "Bikes",
                column: "PlateKey");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Jobs_OpenedAt_Id",
                table: "Jobs");

            migrationBuilder.DropIndex(
                name: "IX_Bikes_KindKey",
                table: "Bikes");

            migrationBuilder.DropIndex(
                name: "IX_Bikes_PlateKey",
                table: "Bikes");

            migrationBuilder.DropColumn(
                name: "ValueMillimetres",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "FindText",
                table: "Jobs");

            migrationBuilder.DropColumn(
                name: "FindText",
                table: "Bikes");

            migrationBuilder.DropColumn(
                name: "KindKey",
                table: "Bikes");

            migrationBuilder.DropColumn(
                name: "Plate",
                table: "Bikes");

            migrationBuilder.DropColumn(
                name: "PlateKey",
                table: "Bikes");
        }
    }
}
