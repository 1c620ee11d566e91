using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Handspun.Jobs.Store.Migrations
{
    /// <inheritdoc />
    public partial class PointKinds : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Figures",
                table: "Records",
                type: "TEXT",
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "Kind",
                table: "Points",
                type: "TEXT",
                nullable: false,
                defaultValue: "Runout");

            migrationBuilder.AddColumn<string>(
                name: "Setup",
                table: "Points",
                type: "TEXT",
                nullable: true);

            // What was kept so far are runouts; their columns become one.
            migrationBuilder.Sql(
                """
                UPDATE Records SET Figures = json_object(
                'kind', 'runout',
                'readings', Figures_Readings,
                'rejected', Figures_Rejected,
                'turns', Figures_Turns,
                'tir_mm', Figures_TirMillimetres,
                'tir_u95_mm', Figures_TirU95Millimetres,
                'eccentricity_mm', Figures_EccentricityMillimetres,
                'roundness_mm', Figures_RoundnessMillimetres,
                'high_spot_deg', Figures_HighSpotDegrees,
                'high_spot_u95_deg', Figures_HighSpotU95Degrees,
                'low_spot_deg', Figures_LowSpotDegrees,
                'angle_reference', Figures_AngleReference);
                """);

            migrationBuilder.DropColumn(
                name: "Figures_AngleReference",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_EccentricityMillimetres",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_HighSpotDegrees",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_HighSpotU95Degrees",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_LowSpotDegrees",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_Readings",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_Rejected",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_RoundnessMillimetres",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_TirMillimetres",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_TirU95Millimetres",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Figures_Turns",
                table: "Records");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Figures_AngleReference",
                table: "Records",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Figures_EccentricityMillimetres",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Figures_HighSpotDegrees",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Figures_HighSpotU95Degrees",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Figures_LowSpotDegrees",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Figures_Readings",
                table: "Records",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<int>(
                name: "Figures_Rejected",
                table: "Records",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<double>(
                name: "Figures_RoundnessMillimetres",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Figures_TirMillimetres",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Figures_TirU95Millimetres",
                table: "Records",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Figures_Turns",
                table: "Records",
                type: "REAL",
                nullable: false,
                defaultValue: 0.0);

            migrationBuilder.Sql(
                """
                UPDATE Records SET
                Figures_Readings = coalesce(json_extract(Figures, '$.readings'), 0),
                Figures_Rejected = coalesce(json_extract(Figures, '$.rejected'), 0),
                Figures_Turns = coalesce(json_extract(Figures, '$.turns'), 0),
                Figures_TirMillimetres = json_extract(Figures, '$.tir_mm'),
                Figures_TirU95Millimetres = json_extract(Figures, '$.tir_u95_mm'),
                Figures_EccentricityMillimetres = json_extract(Figures, '$.eccentricity_mm'),
                Figures_RoundnessMillimetres = json_extract(Figures, '$.roundness_mm'),
                Figures_HighSpotDegrees = json_extract(Figures, '$.high_spot_deg'),
                Figures_HighSpotU95Degrees = json_extract(Figures, '$.high_spot_u95_deg'),
                Figures_LowSpotDegrees = json_extract(Figures, '$.low_spot_deg'),
                Figures_AngleReference = json_extract(Figures, '$.angle_reference');
                """);

            migrationBuilder.DropColumn(
                name: "Figures",
                table: "Records");

            migrationBuilder.DropColumn(
                name: "Kind",
                table: "Points");

            migrationBuilder.DropColumn(
                name: "Setup",
                table: "Points");
        }
    }
}
