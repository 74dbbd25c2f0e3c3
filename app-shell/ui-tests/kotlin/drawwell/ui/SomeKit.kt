package drawwell.ui

import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen

/** A pump in the record, and figures read off a gauge; written without a gesture. */
object SomeKit {
    /** Adds one and shows it. */
    fun pump(stage: Stage): String {
        stage.say(Event.Add("pump", 0u))
        val id = (stage.screen as Screen.Form).form.id
        stage.say(Event.Enter(id, "name", "Heron"))
        stage.say(Event.Go(Place.Pump(id)))
        return id
    }

    fun read(stage: Stage, figure: String) {
        val reading = (stage.screen as Screen.Check).check.reading
        stage.say(Event.Enter(reading.id, reading.field, figure))
    }
}
