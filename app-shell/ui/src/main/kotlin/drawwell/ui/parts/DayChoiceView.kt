package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalLayoutDirection
import drawwell.surface.DayScreen
import drawwell.surface.Event
import drawwell.ui.look.LocalReading
import drawwell.ui.look.Measures

/** The day before, this day and the day after in one row, as time runs in either hand; the day opens others above it. */
@Composable
internal fun DayChoiceView(day: DayScreen, send: (Event) -> Unit) {
    var open by rememberSaveable { mutableStateOf(false) }
    val go = { event: Event ->
        open = false
        send(event)
    }
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart)) {
        if (open) ChoiceChips(day.choice.days, go, Modifier.fillMaxWidth())
        CompositionLocalProvider(LocalLayoutDirection provides LocalReading.current) {
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Measures.apart), Alignment.CenterVertically) {
                day.earlier?.let { SignButton(it, go) }
                val choice = day.choice
                Fold("choose-day", choice.text, if (open) choice.spokenOpen else choice.spoken, open, Modifier.weight(1f), upward = true) { open = !open }
                day.later?.let { SignButton(it, go) }
            }
        }
    }
}
