using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Handspun.Jobs.Store.Migrations
{
    /// <inheritdoc />
    public partial class PlansAndGauges : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Gauge_LastCheck",
                table: "Records",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Limit_Age",
                table: "Records",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "Limit_ConfirmedAt",
                table: "Records",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Limit_Drive",
                table: "Records",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Limit_Age",
                table: "Points",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "Limit_ConfirmedAt",
                table: "Points",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Limit_Drive",
                table: "Points",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<long>(
                name: "ClosedAt",
                table: "Jobs",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Plan",
                table: "Jobs",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Version",
                table: "Jobs",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.CreateTable(
                name: "Book",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    About = table.Column<string>(type: "TEXT", nullable: false),
                    Deed = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Book", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Book_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Gauges",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Description = table.Column<string>(type: "TEXT", nullable: true),
                    CheckEveryDays = table.Column<int>(type: "INTEGER", nullable: false),
                    ResolutionMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    ErrorLimitMillimetres = table.Column<double>(type: "REAL", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Gauges", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "GaugeChecks",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ShopGaugeId = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    DueOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Sheet = table.Column<string>(type: "TEXT", nullable: false),
                    ErrorMillimetres = table.Column<double>(type: "REAL", nullable: false),
                    ErrorU95Millimetres = table.Column<double>(type: "REAL", nullable: false),
                    RepeatabilityMillimetres = table.Column<double>(type: "REAL", nullable: false),
                    Standing = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GaugeChecks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_GaugeChecks_Gauges_ShopGaugeId",
                        column: x => x.ShopGaugeId,
                        principalTable: "Gauges",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "GaugeStudies",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    ShopGaugeId = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Sheet = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_GaugeStudies", x => x.Id);
                    table.ForeignKey(
                        name: "FK_GaugeStudies_Gauges_ShopGaugeId",
                        column: x => x.ShopGaugeId,
                        principalTable: "Gauges",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Book_JobId_Number",
                table: "Book",
                columns: new[] { "JobId", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_GaugeChecks_ShopGaugeId",
                table: "GaugeChecks",
                column: "ShopGaugeId");

            migrationBuilder.CreateIndex(
                name: "IX_GaugeStudies_ShopGaugeId",
                table: "GaugeStudies",
                column: "ShopGaugeId");

            migrationBuilder.CreateIndex(
                name: "IX_Gauges_Name",
                table: "Gauges",
                column: "Name",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Book");

            migrationBuilder.DropTable(
                name: "GaugeChecks");

            migrationBuilder.DropTable(
                name: "GaugeStudies");

            migrationBuilder.DropTable(
                name: "Gauges");

            migrationBuilder.DropColumn(
                name: "Gauge_LastCheck",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Limit_Age",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Limit_ConfirmedAt",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Limit_Drive",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Limit_Age",
                table: "Points");

            migrationBuilder.DropColumn(
                name: "Limit_ConfirmedAt",
                table: "Points");

            migrationBuilder.DropColumn(
                name: "Limit_Drive",
                table: "Points");

            migrationBuilder.DropColumn(
                name: "ClosedAt",
                table: "Jobs");

            migrationBuilder.DropColumn(
                name: "Plan",
                table: "Jobs");

            migrationBuilder.DropColumn(
                name: "Version",
                table: "Jobs");
        }
    }
}
