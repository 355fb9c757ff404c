#include "core/design/catalogue.h"

#include "core/design/catalogue_units.h"
#include "core/design/file.h"
#include "core/design/snapshot.h"

namespace lobewright::design {

void describeRunning(Visitor& v, Running& running) {
    v.number({.name = "speed_rpm",
              .label = "Shaft speed",
              .unit = in::rpm,
              .range = between(5.0, 30000.0),
              .help = "n: speed at which the design is computed. Default 1500/min."},
             running.speed);
    v.number({.name = "under_piston_pressure_bar",
              .label = "Pressure under the pistons",
              .unit = in::bar,
              .range = between(0.0, 20.0),
              .help = "Pressure on the back of both pistons. Default 1 bar."},
             running.underPistonPressure);
    v.flag(
        {.name = "motored", .label = "Motored", .help = "Yes: turned from outside, without fuel."},
        running.motored);
    v.number({.name = "inertia_kg_m2",
              .label = "Moment of inertia",
              .unit = in::kgm2,
              .range = between(0.0, 1e6),
              .help = "I of everything that turns with the shaft; 0: not given."},
             running.inertia);
}

void describe(Visitor& v, Design& design) {
    v.fixed({.name = "format", .label = "Format", .help = "Says what this file is."},
            std::string("lobewright-design"));
    v.fixed({.name = "format_version",
             .label = "Format version",
             .help = "Version of the format that this file follows."},
            formatVersion);
    describeEngine(v, design);
    if (v.walksSnapshots()) {
        describeSnapshots(v, design.snapshots);
    }
}

void describeEngine(Visitor& v, Design& design) {
    v.text({.name = "title",
            .label = "Title",
            .range = between(0.0, 500.0),
            .presence = Presence::optional,
            .help = "Name of the design."},
           design.title);
    v.text({.name = "notes",
            .label = "Notes",
            .range = between(0.0, 100000.0),
            .presence = Presence::optional,
            .help = "What to know about the design."},
           design.notes);
    v.section({.name = "mechanism", .label = "Mechanism"},
              [&] { describeMechanism(v, design.mechanism); });
    v.section({.name = "tracks", .label = "Tracks"}, [&] { describeTracks(v, design.tracks); });
    v.section({.name = "ports", .label = "Ports"}, [&] { describePorts(v, design.ports); });
    constexpr Presence optional = Presence::optional;
    v.section({.name = "gas", .label = "Gas", .presence = optional},
              [&] { describeGas(v, design.gas); });
    v.section({.name = "running", .label = "Running", .presence = optional},
              [&] { describeRunning(v, design.running); });
    v.section({.name = "friction", .label = "Friction", .presence = optional},
              [&] { describeFriction(v, design.friction); });
    describeContact(v, design);
    v.section({.name = "reference", .label = "Reference engines", .presence = optional},
              [&] { describeReference(v, design.reference); });
    v.section({.name = "track_blank", .label = "Track blank", .presence = optional},
              [&] { describeTrackBlank(v, design.trackBlank); });
    v.section({.name = "limits", .label = "Limits", .presence = optional},
              [&] { describeLimits(v, design.limits); });
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
            .help = "Designs kept under a name to be compared and restored; they do not change "
                    "what is computed.",
            .writtenWhenNull = false},
           "Snapshot", snapshots, [&](Snapshot& snapshot) {
               v.text({.name = "name",
                       .label = "Name of the snapshot",
                       .range = between(0.0, 200.0),
                       .help = "Not empty, and no two alike."},
                      snapshot.name);
               v.text({.name = "taken",
                       .label = "Taken",
                       .range = between(0.0, 40.0),
                       .presence = Presence::optional,
                       .help = "Date and time of ISO 8601; empty: not known."},
                      snapshot.taken);
               v.section({.name = "design",
                          .label = "Design of the snapshot",
                          .help = "As the file itself, without format and snapshots."},
                         [&] { v.snapshotDesign(snapshot.design); });
           });
}

} // namespace lobewright::design
