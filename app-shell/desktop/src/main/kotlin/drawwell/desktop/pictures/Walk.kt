package drawwell.desktop.pictures

import drawwell.desktop.LookAroundRecord
import drawwell.surface.Clock
import drawwell.surface.Deed
import drawwell.surface.Drawwell
import drawwell.surface.DrawwellInterface
import drawwell.surface.Event
import drawwell.surface.Opening
import drawwell.surface.Part
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.StartingQuestion
import drawwell.surface.Trouble
import drawwell.ui.Told
import drawwell.ui.pictures.drawing
import java.io.File
import java.nio.file.Files

/** Goes through the app as a person would, with the invented family, and keeps every screen on the way. */
internal class Walk private constructor(private val core: DrawwellInterface, start: Clock) {
    private val zone = start.zone
    private var milliseconds = start.unixMilliseconds
    private val seen = linkedMapOf<String, Shown>()

    private fun now() = Clock(milliseconds, zone)

    private fun pass(seconds: Int) {
        milliseconds += seconds * 1000L
    }

    private fun does(event: Event): Screen = core.update(event, now()).screen

    private fun mark(deed: Deed, after: Int) {
        pass(after)
        does(Event.Mark(deed))
    }

    private fun keep(name: String, screen: Screen = core.here(now())) {
        seen[name] = Shown(screen)
    }

    private fun days() {
        keep("day-today", does(Event.Go(Place.Day(0u))))
        keep("day-yesterday", does(Event.Go(Place.Day(1u))))
        val day = core.here(now()) as Screen.Day
        day.day.entries.maxByOrNull { it.strip?.bands?.size ?: 0 }?.let { entry(does(it.open.event) as Screen.Form) }
    }

    private fun entry(opened: Screen.Form) {
        keep("entry", opened)
        val amount = opened.form.groups.flatMap { it.rows }.first { it.field == "amount_left" }
        try {
            does(Event.Enter(amount.id, amount.field, "plenty"))
        } catch (trouble: Trouble) {
            seen["entry-trouble"] = Shown(opened, Told.of(trouble))
        }
    }

    private fun lists() {
        KitWalk(::does, ::keep).through()
        keep("visit", does(Event.Go(Place.Visit)))
        sheet()
        keep("family", does(Event.Go(Place.Family)))
        keep("settings", does(Event.Go(Place.Entry("settings"))))
        keep("report", does(Event.Go(Place.Report)))
    }

    /** A name on it, a question, and one part left out. */
    private fun sheet() {
        does(Event.Enter("settings", "sheet_name", "Mara Lindqvist"))
        val question = (does(Event.Add("question", 0u)) as Screen.Form).form.id
        does(Event.Enter(question, "question", "May I leave out the session at three?"))
        keep("sheet", does(Event.Go(Place.Sheet)))
        keep("sheet-part-out", does(Event.LeaveOut("comfort", true)))
        repeat(4) { does(Event.Undo) }
    }

    private fun supply() {
        keep("supply-28", does(Event.Go(Place.Supply(28u))))
        keep("supply-7", does(Event.Go(Place.Supply(7u))))
        keep("supply-all", does(Event.Go(Place.Supply(0u))))
        keep("term", does(Event.Go(Place.Term("letdown"))))
        keep("supply-more", does(Event.Go(Place.SupplyMore(28u))))
        keep("supply-figures", does(Event.Go(Place.SupplyFigures(28u))))
        keep("rules", does(Event.Go(Place.Entry("rules"))))
        asked()
    }

    /** An aim, and a session that is missing. */
    private fun asked() {
        does(Event.Enter("settings", "aim", "850"))
        val yesterday = does(Event.Go(Place.Day(1u))) as Screen.Day
        val missing = yesterday.day.entries.filter { it.strip != null }.let { it[it.size / 2] }
        does(Event.Remove(missing.id))
        keep("supply-asks", does(Event.Go(Place.Supply(28u))))
        does(Event.Undo)
        does(Event.Undo)
    }

    private fun session() {
        keep("now-ready", does(Event.Go(Place.Now)))
        keep("just-pumped", does(Event.Go(Place.JustPumped(null))))
        keep("just-pumped-lasted", does(Event.Go(Place.JustPumped(30u))))
        does(Event.Go(Place.Now))
        does(Event.Start)
        pass(8)
        keep("now-running-fresh")
        mark(Deed.LETDOWN_PHASE, 2)
        repeat(4) { mark(Deed.STRONGER, 3) }
        repeat(2) { mark(Deed.FASTER, 2) }
        mark(Deed.LETDOWN, 75)
        mark(Deed.EXPRESSION_PHASE, 12)
        mark(Deed.SLOWER, 3)
        repeat(3) { mark(Deed.STRONGER, 4) }
        mark(Deed.HURTS, 150)
        pass(3)
        keep("now-running-hurts")
        does(Event.Mark(Deed.TURNED_DOWN))
        hurts()
        mark(Deed.REST, 160)
        mark(Deed.LETDOWN_PHASE, 55)
        mark(Deed.LETDOWN, 62)
        mark(Deed.EXPRESSION_PHASE, 9)
        pass(140)
        keep("now-running")
        pass(200)
        amounts(does(Event.Finish) as Screen.Amounts)
    }

    private fun hurts() {
        val running = core.here(now()) as Screen.Running
        running.running.pain.flatMap { it.options }.lastOrNull { it.event is Event.Pain && (it.event as Event.Pain).score == 4u }?.let { does(it.event) }
    }

    private fun amounts(asked: Screen.Amounts) {
        keep("now-amounts-fresh", asked)
        val session = asked.amounts.session
        does(asked.drawing(Part.LEFT, 0.55f))
        keep("now-amounts", does(asked.drawing(Part.RIGHT, 0.72f)))
        does(Event.AmountsDone(session))
    }

    private fun first(folder: File) {
        keep("welcome")
        keep("starting-units", does(Event.Begin))
        keep("starting-birth", does(Event.Go(Place.Starting(StartingQuestion.BIRTH))))
        keep("starting-sessions", does(Event.Go(Place.Starting(StartingQuestion.SESSIONS_A_DAY))))
        keep("now-first", does(Event.Go(Place.Now)))
        does(Event.Start)
        pass(FORGOTTEN)
        keep("now-running-long")
        keep("supply-empty", does(Event.Go(Place.Supply(28u))))
        keep("tonight-empty-running", does(Event.Go(Place.Tonight)))
        does(Event.Go(Place.Now))
        does(Event.AmountsLater((does(Event.Finish) as Screen.Amounts).amounts.session))
        keep("tonight-empty", does(Event.Go(Place.Tonight)))
        short()
        trace(folder.resolve("trace.csv"))
        VisitWalk(core, ::now) { name, screen, told -> seen[name] = Shown(screen, told) }.through(folder)
    }

    /** Four days, for which little can be told. */
    private fun short() {
        repeat(20) {
            pass(5 * 3600)
            does(Event.Start)
            pass(900)
            val amounts = does(Event.Finish)
            does(amounts.drawing(Part.LEFT, 0.4f))
            does(amounts.drawing(Part.RIGHT, 0.5f))
            does(Event.AmountsDone((amounts as Screen.Amounts).amounts.session))
        }
        keep("supply-short", does(Event.Go(Place.Supply(28u))))
    }

    /** A look around takes no file, so it is the own record that does. */
    private fun trace(file: File) {
        InventedTrace.write(file)
        val pump = (does(Event.Add("pump", 0u)) as Screen.Form).form.id
        does(Event.Enter(pump, "name", "Heron"))
        val begun = does(Event.BeginTrace(pump)) as Screen.Findings
        keep("kit-trace-none", begun)
        does(begun.findings.actions.first().event)
        keep("kit-trace", core.importFile(file.path, now()).screen)
    }

    companion object {
        private const val FORGOTTEN = 4 * 3600

        fun screens(): Map<String, Shown> {
            val folder = Files.createTempDirectory("drawwell-pictures").toFile()
            try {
                return empty(folder.resolve("empty").apply { mkdirs() }) + family(folder.resolve("family").apply { mkdirs() })
            } finally {
                folder.deleteRecursively()
            }
        }

        private fun empty(folder: File): Map<String, Shown> {
            val now = Clock(System.currentTimeMillis(), "Europe/Berlin")
            val core = Drawwell.open(folder.resolve("record.drawwell").path, Opening("pictures", "en", false), now)
            return core.use { Walk(it, now).apply { first(folder) }.seen }
        }

        private fun family(folder: File): Map<String, Shown> {
            val record = LookAroundRecord.openIn(folder)
            val walk = Walk(record.core, record.now())
            walk.session()
            walk.days()
            walk.lists()
            walk.supply()
            KeptWalk(walk::does, walk::keep).through()
            ComfortWalk(walk::does, walk::pass, walk::keep).through()
            TonightWalk(walk::does, walk::pass, walk::keep).through()
            (record.core as AutoCloseable).close()
            return walk.seen
        }
    }
}
