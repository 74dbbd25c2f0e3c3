package drawwell.ui.parts

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.rotate
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import drawwell.surface.DayChoice
import drawwell.surface.DayScreen
import drawwell.surface.Event
import drawwell.surface.Sign
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.LocalReading
import drawwell.ui.look.Measures
import drawwell.ui.pictures.SignPicture

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
                ThisDay(day.choice, open, Modifier.weight(1f)) { open = !open }
                day.later?.let { SignButton(it, go) }
            }
        }
    }
}

@Composable
private fun ThisDay(choice: DayChoice, open: Boolean, modifier: Modifier, turn: () -> Unit) {
    Ground(
        LocalColours.current.plain,
        modifier.heightIn(min = Measures.target).testTag("choose-day").clickable { turn() }.semantics {
            contentDescription = if (open) choice.spokenOpen else choice.spoken
            role = Role.Button
        },
        Rounded,
        edged = true,
        align = Alignment.Center,
    ) {
        Row(
            Modifier.padding(horizontal = 14.dp, vertical = 8.dp),
            Arrangement.spacedBy(12.dp),
            Alignment.CenterVertically,
        ) {
            OneLine(choice.text, LocalLettering.current.action, Modifier.weight(1f, fill = false))
            SignPicture(Sign.LATER, Modifier.rotate(if (open) 90f else -90f), size = 18.dp)
        }
    }
}
