package drawwell.desktop.pictures

import drawwell.surface.CaseloadScreen
import drawwell.surface.Clock
import drawwell.surface.Desk
import drawwell.surface.DeskEvent
import drawwell.surface.Event
import drawwell.surface.FormScreen
import drawwell.surface.Opening
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.Trouble
import drawwell.ui.Told
import drawwell.ui.caseload.onDesk
import java.io.File
import java.nio.file.Files
import java.time.Instant
import java.time.ZoneId

/** A consultant's morning: an empty desk, her card, six invented families that share, one read, a plan written. */
internal class CaseloadWalk private constructor(private val folder: File, private val now: Clock) {
    private val desk = Desk.open(folder.resolve("desk").path, Opening("pictures", "en", false), now)
    private val seen = linkedMapOf<String, ShownAtDesk>()

    private fun keep(name: String, caseload: CaseloadScreen) {
        seen["caseload-$name"] = ShownAtDesk(caseload)
    }

    private fun does(event: Event): CaseloadScreen = desk.update(event, now).caseload

    private fun through() {
        keep("empty", desk.here(now))
        does(Event.OnDesk(DeskEvent.OpenDesk(Place.Entry("settings"))))
        does(Event.Enter("settings", "sheet_name", "Hanne Voss"))
        val card = does(Event.OnDesk(DeskEvent.OpenDesk(Place.OwnCard)))
        SomeFamilies(folder, now).shared((card.beside as Screen.Card).card.line).forEach { desk.importFile(it.path, now) }
        due()
        keep("card", does(Event.OnDesk(DeskEvent.OpenDesk(Place.OwnCard))))
        keep("desk", does(Event.OnDesk(DeskEvent.OpenDesk(Place.Desk))))
        reads()
        writes()
        passphrase()
    }

    private fun family(name: String): String =
        rows().single { it.title == name }.let { (it.open!!.event.onDesk as DeskEvent.OpenFamily).family }

    private fun rows() = (desk.here(now).families as Screen.List).list.groups.flatMap { it.rows }

    private fun due() {
        val id = family("Jun and the twins")
        does(Event.OnDesk(DeskEvent.OpenDesk(Place.CaseFamily(id))))
        does(Event.Enter(id, "next_visit", tomorrow()))
        does(Event.Enter(id, "note", "Twins, born at 34 weeks. Rents the pump until spring."))
        keep("notes", desk.here(now))
    }

    private fun tomorrow() = Instant.ofEpochMilli(now.unixMilliseconds).atZone(ZoneId.of(now.zone)).toLocalDate().plusDays(1).toString()

    private fun reads() {
        val id = family(SomeFamilies.LONG)
        keep("family", does(Event.OnDesk(DeskEvent.OpenFamily(id))))
        keep("family-now", does(Event.Go(Place.Now)))
        try {
            does(Event.Start)
        } catch (trouble: Trouble) {
            seen["caseload-only-read"] = ShownAtDesk(desk.here(now), Told.of(trouble))
        }
        keep("family-sheet", does(Event.Go(Place.Sheet)))
        keep("emergency", does(Event.OnDesk(DeskEvent.OpenFamily(family("Ida Brandt")))))
    }

    private fun writes() {
        val writing = does(Event.OnDesk(DeskEvent.WritePlan(family(SomeFamilies.LONG)))).beside as Screen.Findings
        val words = writing.findings.sections.flatMap { it.fields }.first { it.field == "plan_words" }
        does(Event.Enter(words.id, words.field, "You keep your supply well. Let us try a little more sleep and see whether it holds."))
        val plan = words.id
        keep("plan-empty", desk.here(now))
        part(writing, "setting") { form ->
            does(form.groups.flatMap { it.rows }.first { it.field == "pump_name" }.options.first().event)
            does(Event.Enter(form.id, "level", "4"))
            does(Event.Enter(form.id, "use_or_try", "try"))
            keep("plan-part", desk.here(now))
        }
        part(writing, "rhythm") { form ->
            keep("plan-rhythm", desk.here(now))
            does(Event.Enter(form.id, "sessions_a_day", "6"))
            does(Event.Enter(form.id, "sleep_stretch", "7:00"))
        }
        keep("plan", does(Event.OnDesk(DeskEvent.OpenDesk(Place.Plan(plan)))))
        rules(writing, plan)
    }

    private fun part(plan: Screen.Findings, about: String, fills: (FormScreen) -> Unit) {
        val add = plan.findings.sections.flatMap { it.actions }.single { it.key == "add-part-$about" }
        fills((does(add.event).beside as Screen.Form).form)
    }

    private fun rules(writing: Screen.Findings, plan: String) {
        val rules = does(writing.findings.sections.flatMap { it.actions }.single { it.key == "add-part-rule" }.event)
        keep("plan-rules", rules)
        does((rules.beside as Screen.List).list.groups.flatMap { it.rows }.first { it.open != null }.open!!.event)
        keep("plan-rule", desk.here(now))
        does(Event.OnDesk(DeskEvent.OpenDesk(Place.Plan(plan))))
    }

    /** Two files that only a passphrase opens. */
    private fun passphrase() {
        listOf("Rosa", "Wim").map { SomeFamilies(folder, now).sealed(it) }.forEach { desk.importFile(it.path, now) }
        keep("passphrase", desk.here(now))
        keep("waiting", does(Event.OnDesk(DeskEvent.OpenDesk(Place.Desk))))
    }

    companion object {
        fun screens(): Map<String, ShownAtDesk> {
            val folder = Files.createTempDirectory("drawwell-caseload").toFile()
            try {
                val walk = CaseloadWalk(folder, SomeFamilies.present())
                walk.desk.use { walk.through() }
                return walk.seen
            } finally {
                folder.deleteRecursively()
            }
        }
    }
}
