"""What a report is made from: the analysis of each log, the job if there is one, nothing else."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from co2vent.guidance.session import View
from co2vent.readings.reading import Gas, Reading, Rejection
from co2vent.store.job_record import JobRecord
from co2vent.store.notes import Note


@dataclass(frozen=True, slots=True, kw_only=True)
class LogFacts:
    """One readings log and what the analysis says of it."""

    name: str
    sha256: str  # of the file as it was read; empty: it was not kept in a file
    view: View
    runs: tuple[tuple[Reading, ...], ...]  # for drawing; see `thin_runs`
    rejections: tuple[Rejection, ...] = ()
    torn_bytes: int = 0  # of a last row that was cut off
    zero_given: bool = False
    coldest_clamp_k: float | None = None
    most_room_co2_ppm: float | None = None
    recorded: str = ""  # when and from what, where the log says so
    notes: tuple[Note, ...] = ()  # written on the recording later, in a file beside it
    notes_problem: str = ""  # why that file can't be read

    def measured(self, quantity: str) -> bool:
        """Say whether any reading has `quantity`, a field of `Reading`."""
        return any(getattr(reading, quantity) is not None for run in self.runs for reading in run)


@dataclass(frozen=True, slots=True, kw_only=True)
class ReportFacts:
    """All that a report shows."""

    made_at: str  # ISO 8601
    version: str
    logs: tuple[LogFacts, ...]
    record: JobRecord | None = None
    missing_logs: tuple[str, ...] = ()  # logs of the job that could not be read, with the reason

    @property
    def simulated(self) -> bool:
        """Whether any of it is simulated; then every page says so."""
        job = self.record is not None and self.record.job.simulated
        return job or any(log.view.setup.simulated for log in self.logs)

    @property
    def vent_log(self) -> LogFacts | None:
        """The newest log in which the section was vented and held; else the newest of no test."""
        if self.vent_logs:
            return self.vent_logs[-1]
        others = [log for log in self.logs if log.name not in self.test_names]
        others = [log for log in others if log.view.setup.gas is Gas.CO2]
        return others[-1] if others else None

    @property
    def vent_logs(self) -> tuple[LogFacts, ...]:
        """The logs in which CO2 was vented and the section held after it."""
        return tuple(
            log
            for log in self.logs
            if log.view.setup.gas is Gas.CO2
            and log.name not in self.test_names
            and any(hold.number > 0 for hold in log.view.holds)
        )

    @property
    def test_names(self) -> frozenset[str]:
        """The logs that were judged as a standing or vacuum test."""
        tests = () if self.record is None else self.record.job.tests
        return frozenset(test.log for test in tests)

    @property
    def section(self) -> str:
        """The section's name as the job or else the log gives it."""
        if self.record is not None and self.record.job.head.section:
            return self.record.job.head.section
        names = [log.view.setup.section_name for log in self.logs if log.view.setup.section_name]
        return names[-1] if names else ""


def assumptions(log: LogFacts) -> tuple[str, ...]:
    """Return what the analysis had to assume or do without, one sentence each."""
    setup, view = log.view.setup, log.view
    said: list[str] = []
    if setup.ambient_pressure_assumed:
        said.append("Ambient pressure was not given: sea level (1013 mbar) was assumed.")
    if setup.section_volume_m3 is None:
        said.append("Section volume was not given: masses could not be bounded in kg.")
    if setup.gauge_accuracy_fraction is None or setup.gauge_span_pa is None:
        said.append("Gauge class or range was not given: the stop pressure holds no gauge error.")
    if not log.zero_given:
        said.append("No zero reading was given: none was subtracted.")
    if setup.metal_minimum_temperature_k is None and setup.gas is Gas.CO2:
        said.append("The metal's minimum temperature was not given: it was not watched.")
    if setup.relief_pressure_pa is None:
        said.append("The relief setting was not given.")
    if not log.measured("vent_open"):
        said.append("The vent valve was not recorded: holds were found from the pressure alone.")
    if not log.measured("line_temperature_k"):
        said.append("No clamp reading: the liquid temperature is not known.")
    if setup.insulated is None:
        said.append("Insulated or bare was not given: the heat was judged from the readings.")
    if view.rejections:
        said.append(f"Rows that could not be read and were left out: {view.rejections}.")
    if log.torn_bytes:
        said.append(f"The recording was cut off in its last row ({log.torn_bytes} bytes left out).")
    if view.mass_vented_kg is not None:
        said.append("The mass vented is computed, not weighed.")
    said.append(
        "The hold model is computed and was not compared with a measured vent of a real section."
    )
    return tuple(said)


def thin_runs(
    readings: Iterable[Reading], count: int, usual_s: float, columns: int = 700
) -> tuple[tuple[Reading, ...], ...]:
    """Return the readings as runs without gaps, thinned for drawing. Reads them once.

    Of each group of readings the first, the lowest, the highest and the last are kept: a short dip
    below the triple point must show on paper. `usual_s` is the usual interval [s].
    """
    size = max(1, count // columns)
    gap_s = max(5.0, 5.0 * usual_s)  # a display would have called it stale long before
    runs: list[list[Reading]] = []
    group: list[Reading] = []
    before: Reading | None = None
    for reading in readings:
        if (
            before is None
            or reading.segment != before.segment
            or (reading.at_s - before.at_s > gap_s)
        ):
            if runs:
                runs[-1] += _extremes(group)
            runs.append([])
            group = []
        group.append(reading)
        if len(group) >= size:
            runs[-1] += _extremes(group)
            group = []
        before = reading
    if runs:
        runs[-1] += _extremes(group)
    return tuple(tuple(run) for run in runs)


def _extremes(group: Sequence[Reading]) -> list[Reading]:
    if len(group) < 5:
        return list(group)
    indices = range(len(group))
    chosen = {
        0,
        min(indices, key=lambda index: group[index].pressure_pa),
        max(indices, key=lambda index: group[index].pressure_pa),
        len(group) - 1,
    }
    return [group[index] for index in sorted(chosen)]
