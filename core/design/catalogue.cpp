#include "core/design/catalogue.h"

#include "core/design/file.h"
#include "core/design/schedules.h"
#include "core/design/snapshot.h"

LW_TEXTS_OF(Core)

namespace lobewright::design {

namespace {

constexpr Choice<LoadBy> waysOfLoad[] = {
    {LoadBy::supply, {"supply", LW_TEXT("Supply pressure")}},
    {LoadBy::mixture, {"mixture", LW_TEXT("Mixture strength")}},
};

void describeLoad(Visitor& v, Running& running) {
    v.number("load", LW_TEXT("Load"), in::pure, between(0.0, 1.0), running.load,
             LW_TEXT("Share of full load, 0 to 1. Default 1."));
    v.choice("load_by", LW_TEXT("Load by"), waysOfLoad, running.loadBy,
             LW_TEXT("Supply pressure: that of a constant supply, or that before the intake of "
                     "blower, compressor or pump, falls from its full value to the floor. "
                     "Mixture strength: the excess-air ratio is that of full load / load."));
    v.branch({"load_by", {"supply"}}, running.loadBy == LoadBy::supply, [&] {
        v.number(
            "load_floor_bar", LW_TEXT("Pressure of load 0"), in::bar, between(0.05, 20.0),
            running.loadFloor,
            LW_TEXT("Floor from which the pressure rises linearly with the load. Empty: with a "
                    "constant supply, the exhaust back pressure; before the intake of a compressor "
                    "wheel or of a pump that draws under its skirt, 0.8 of the ambient pressure; "
                    "before that of any other blower or pump, a quarter of it (own estimates)."));
    });
}

} // namespace

void describeRunning(Visitor& v, Running& running) {
    v.number("speed_rpm", LW_TEXT("Shaft speed"), in::rpm, between(5.0, 30000.0), running.speed,
             LW_TEXT("n: speed at which the design is computed. Default 1500 rpm."));
    v.number("under_piston_pressure_bar", LW_TEXT("Under-piston pressure"), in::bar,
             between(0.0, 20.0), running.underPistonPressure,
             LW_TEXT("Pressure on the back of both pistons. Default 1 bar."));
    v.flag("motored", LW_TEXT("Motored"), running.motored,
           LW_TEXT("Yes: driven from outside, without fuel."));
    v.number("inertia_kg_m2", LW_TEXT("Moment of inertia"), in::kgm2, between(0.0, 1e6),
             running.inertia, LW_TEXT("I of everything that turns with the shaft; 0: not given."));
    describeLoad(v, running);
}

void describeSchedules(Visitor& v, std::vector<Schedule>& schedules) {
    constexpr auto mostPoints = static_cast<double>(mostScheduledSpeeds);
    v.list({.name = "schedules",
            .label = LW_TEXT("Schedules over speed"),
            .range = between(0.0, static_cast<double>(mostSchedules)),
            .presence = Presence::optional,
            .help = LW_TEXT("Inputs that follow the shaft speed instead of staying constant."),
            .writtenWhenNull = false},
           LW_TEXT("Schedule"), schedules, [&](Schedule& schedule) {
               v.text({.name = "input",
                       .label = LW_TEXT("Input that follows the speed"),
                       .range = between(0.0, 200.0),
                       .help = LW_TEXT("JSON pointer of a number of the adjuster, of the gas side "
                                       "or of the operating point, but for the speed itself.")},
                      schedule.input);
               v.numbers({.name = "speed_rpm",
                          .label = LW_TEXT("Speeds of the schedule"),
                          .range = between(1.0, mostPoints),
                          .help = LW_TEXT("Shaft speeds of the points, ascending. Below the first "
                                          "and above the last the value is constant.")},
                         {.name = "",
                          .label = LW_TEXT("Speed"),
                          .unit = in::rpm,
                          .range = between(5.0, 30000.0),
                          .help = LW_TEXT("Shaft speed of this point.")},
                         schedule.speed);
               v.numbers({.name = "value",
                          .label = LW_TEXT("Values of the schedule"),
                          .range = between(1.0, mostPoints),
                          .help = LW_TEXT("One for each speed, in the unit of the input; between "
                                          "them a monotone cubic (Fritsch and Carlson 1980).")},
                         {.name = "",
                          .label = LW_TEXT("Value"),
                          .range = between(-1e6, 1e6),
                          .help = LW_TEXT("Value of the input at the speed of this point, in its "
                                          "unit.")},
                         schedule.value);
           });
}

void describe(Visitor& v, Design& design) {
    v.fixed({.name = "format", .label = "Format", .help = LW_TEXT("Says what this file is.")},
            std::string("lobewright-design"));
    v.fixed({.name = "format_version",
             .label = LW_TEXT("Format version"),
             .help = LW_TEXT("Version of the format that this file follows.")},
            formatVersion);
    describeEngine(v, design);
    if (v.walksSnapshots()) {
        describeSnapshots(v, design.snapshots);
    }
}

void describeEngine(Visitor& v, Design& design) {
    v.text({.name = "title",
            .label = LW_TEXT("Title"),
            .range = between(0.0, 500.0),
            .presence = Presence::optional,
            .help = LW_TEXT("Name of the design.")},
           design.title);
    v.text({.name = "notes",
            .label = LW_TEXT("Notes"),
            .range = between(0.0, 100000.0),
            .presence = Presence::optional,
            .help = LW_TEXT("Remarks on the design.")},
           design.notes);
    v.section("mechanism", LW_TEXT("Mechanism"), [&] { describeMechanism(v, design.mechanism); });
    const bool isOneSided = design.mechanism.isOneSided();
    if (isOneSided) { // a head has no track, and no mass to weigh
        design.tracks.exhaust.reset();
        design.mechanism.pistonMass.exhaust = design.mechanism.pistonMass.inlet;
    }
    if (isOneSided && v.fillsDefaults()) {
        design.gas.scavenging.shortCircuitFraction = gas::oneSidedShortCircuit;
    }
    v.section("tracks", LW_TEXT("Tracks"), [&] { describeTracks(v, design.tracks, isOneSided); });
    v.section("ports", "Ports", [&] { describePorts(v, design.ports, isOneSided); });
    constexpr Presence optional = Presence::optional;
    v.section({.name = "gas", .label = LW_TEXT("Gas"), .presence = optional},
              [&] { describeGas(v, design.gas, isOneSided); });
    v.section({.name = "running", .label = LW_TEXT("Operating point"), .presence = optional},
              [&] { describeRunning(v, design.running); });
    v.section({.name = "friction", .label = LW_TEXT("Friction"), .presence = optional},
              [&] { describeFriction(v, design.friction); });
    describeContact(v, design);
    v.section({.name = "reference", .label = LW_TEXT("Reference engines"), .presence = optional},
              [&] { describeReference(v, design.reference); });
    v.section({.name = "track_blank", .label = LW_TEXT("Track blank"), .presence = optional},
              [&] { describeTrackBlank(v, design.trackBlank); });
    v.section({.name = "limits", .label = "Limits", .presence = optional},
              [&] { describeLimits(v, design.limits); });
    describeSchedules(v, design.schedules);
    describeKnowledge(v, design.knowledge);
}

void Visitor::snapshotDesign(Design& design) {
    describeEngine(*this, design);
}

void describeSnapshots(Visitor& v, std::vector<Snapshot>& snapshots) {
    v.list({.name = "snapshots",
            .label = "Snapshots",
            .range = between(0.0, static_cast<double>(mostSnapshots)),
            .presence = Presence::optional,
            .help =
                LW_TEXT("Designs kept under a name to be compared and restored; they do not change "
                        "what is computed."),
            .writtenWhenNull = false},
           LW_TEXT("Snapshot"), snapshots, [&](Snapshot& snapshot) {
               v.text({.name = "name",
                       .label = LW_TEXT("Name of the snapshot"),
                       .range = between(0.0, 200.0),
                       .help = LW_TEXT("Not empty, and no two alike.")},
                      snapshot.name);
               v.text({.name = "taken",
                       .label = "Taken",
                       .range = between(0.0, 40.0),
                       .presence = Presence::optional,
                       .help = LW_TEXT("Date and time of ISO 8601; empty: not known.")},
                      snapshot.taken);
               v.section({.name = "design",
                          .label = LW_TEXT("Design of the snapshot"),
                          .help = LW_TEXT("Like the file itself, without format and snapshots.")},
                         [&] { v.snapshotDesign(snapshot.design); });
           });
}

} // namespace lobewright::design
