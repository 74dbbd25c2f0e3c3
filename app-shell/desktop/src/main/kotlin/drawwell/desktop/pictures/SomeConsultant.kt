package drawwell.desktop.pictures

import drawwell.surface.Clock
import drawwell.surface.Desk
import drawwell.surface.DeskEvent
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Export
import drawwell.surface.Opening
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.ui.caseload.onDesk
import java.io.File

/** A consultant who is invented, at a desk of her own: she opens what a family shares, and sends a plan back. */
internal class SomeConsultant(private val folder: File, private val now: () -> Clock) : AutoCloseable {
    private val desk = Desk.open(folder.path, Opening("desk", "en", false), now())

    /** The line that her QR code holds. */
    fun card(): String {
        beside(Event.OnDesk(DeskEvent.OpenDesk(Place.Desk)))
        beside(Event.Enter("settings", "sheet_name", "Ada Marsh"))
        return (beside(Event.OnDesk(DeskEvent.OpenDesk(Place.OwnCard))) as Screen.Card).card.line
    }

    /** Her plan for the family whose file this is, sealed for it. */
    fun answers(file: File): File {
        desk.importFile(file.path, now())
        val family = (desk.here(now()).families as Screen.List).list.groups.flatMap { it.rows }
            .firstNotNullOf { it.open?.event?.onDesk as? DeskEvent.OpenFamily }.family
        val written = (beside(Event.OnDesk(DeskEvent.WritePlan(family))) as Screen.Findings).findings.actions
            .firstNotNullOf { (it.event as? Event.Export)?.what as? Export.Plan }
        val plan = written.plan
        beside(Event.Enter(plan, "plan_words", "You are doing a lot. Let us see whether one longer stretch of sleep costs any milk."))
        part(plan, "rhythm", "sessions_a_day" to "7", "longest_interval" to "6 h")
        part(plan, "setting", "pump_name" to "Heron", "plan_phase" to "expression", "level" to "7", "use_or_try" to "try", "words" to "Only while it stays comfortable.")
        part(plan, "check", "plan_check" to "pump")
        part(plan, "aim", "aim" to "700")
        val goes = desk.update(Event.Export(written), now()).effects.filterIsInstance<Effect.HandOver>().single()
        val out = folder.resolve(goes.fileName)
        desk.export(goes.what, out.path, now())
        return out
    }

    private fun part(plan: String, kind: String, vararg fields: Pair<String, String>) {
        val id = (beside(Event.AddPlanPart(plan, kind)) as Screen.Form).form.id
        fields.forEach { (field, typed) -> beside(Event.Enter(id, field, typed)) }
    }

    private fun beside(event: Event): Screen = desk.update(event, now()).caseload.beside

    override fun close() = desk.close()
}
