using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Handspun.Jobs.Store.Migrations
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Bikes",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Make = table.Column<string>(type: "TEXT", nullable: false),
                    Model = table.Column<string>(type: "TEXT", nullable: false),
                    Year = table.Column<int>(type: "INTEGER", nullable: false),
                    Vin = table.Column<string>(type: "TEXT", nullable: true),
                    Odometer = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Bikes", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Jobs",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Number = table.Column<string>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Customer = table.Column<string>(type: "TEXT", nullable: true),
                    OpenedAt = table.Column<long>(type: "INTEGER", nullable: false),
                    BikeId = table.Column<int>(type: "INTEGER", nullable: false),
                    CautionsReadAt = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Jobs", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Jobs_Bikes_BikeId",
                        column: x => x.BikeId,
                        principalTable: "Bikes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Points",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<int>(type: "INTEGER", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    Code = table.Column<string>(type: "TEXT", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Limit_LowerMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Limit_UpperMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Limit_Source = table.Column<string>(type: "TEXT", nullable: true),
                    Limit_ConfirmedBy = table.Column<string>(type: "TEXT", nullable: true),
                    PickedRecordId = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Points", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Points_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Records",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    JobPointId = table.Column<int>(type: "INTEGER", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Seconds = table.Column<double>(type: "REAL", nullable: false),
                    Ending = table.Column<string>(type: "TEXT", nullable: false),
                    Status = table.Column<string>(type: "TEXT", nullable: false),
                    Missing = table.Column<string>(type: "TEXT", nullable: true),
                    Gauge_Name = table.Column<string>(type: "TEXT", nullable: false),
                    Gauge_Profile = table.Column<string>(type: "TEXT", nullable: false),
                    Gauge_Port = table.Column<string>(type: "TEXT", nullable: false),
                    Gauge_ResolutionMillimetres = table.Column<double>(type: "REAL", nullable: false),
                    Gauge_ErrorLimitMillimetres = table.Column<double>(type: "REAL", nullable: false),
                    Limit_LowerMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Limit_UpperMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Limit_Source = table.Column<string>(type: "TEXT", nullable: true),
                    Limit_ConfirmedBy = table.Column<string>(type: "TEXT", nullable: true),
                    Figures_Readings = table.Column<int>(type: "INTEGER", nullable: false),
                    Figures_Rejected = table.Column<int>(type: "INTEGER", nullable: false),
                    Figures_Turns = table.Column<double>(type: "REAL", nullable: false),
                    Figures_TirMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Figures_TirU95Millimetres = table.Column<double>(type: "REAL", nullable: true),
                    Figures_EccentricityMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Figures_RoundnessMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Figures_HighSpotDegrees = table.Column<double>(type: "REAL", nullable: true),
                    Figures_HighSpotU95Degrees = table.Column<double>(type: "REAL", nullable: true),
                    Figures_LowSpotDegrees = table.Column<double>(type: "REAL", nullable: true),
                    Figures_AngleReference = table.Column<string>(type: "TEXT", nullable: true),
                    Verdict = table.Column<string>(type: "TEXT", nullable: true),
                    ProbabilityOutside = table.Column<double>(type: "REAL", nullable: true),
                    Warnings = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Records", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Records_Points_JobPointId",
                        column: x => x.JobPointId,
                        principalTable: "Points",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Bikes_Vin",
                table: "Bikes",
                column: "Vin");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_BikeId",
                table: "Jobs",
                column: "BikeId");

            migrationBuilder.CreateIndex(
                name: "IX_Jobs_Number",
                table: "Jobs",
                column: "Number",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Points_JobId_Code",
                table: "Points",
                columns: new[] { "JobId", "Code" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Records_JobPointId_At",
                table: "Records",
                columns: new[] { "JobPointId", "At" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Records");

            migrationBuilder.DropTable(
                name: "Points");

            migrationBuilder.DropTable(
                name: "Jobs");

            migrationBuilder.DropTable(
                name: "Bikes");
        }
    }
}
