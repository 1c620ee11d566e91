using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Handspun.Jobs.Store.Migrations
{
    /// <inheritdoc />
    public partial class Cranks : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Crank",
                table: "Jobs",
                type: "TEXT",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Crank",
                table: "Jobs");
        }
    }
}
