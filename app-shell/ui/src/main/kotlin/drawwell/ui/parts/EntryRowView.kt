package drawwell.ui.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import drawwell.surface.EntryRow
import drawwell.surface.Event
import drawwell.surface.Sign
import drawwell.ui.look.LocalColours
import drawwell.ui.look.LocalLettering
import drawwell.ui.look.largeType
import drawwell.ui.pictures.SignPicture
import drawwell.ui.pictures.StripPicture

/** A record in a day's list; a tap opens it. */
@Composable
internal fun EntryRowView(entry: EntryRow, send: (Event) -> Unit) {
    val tone = LocalColours.current.sheet
    val opens = entry.open.copy(spoken = entry.spoken.ifEmpty { entry.open.spoken })
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp)) {
        Ground(tone, Modifier.fillMaxWidth().touch(opens, tone.ink, send), Rounded) {
            Column(Modifier.padding(horizontal = 14.dp, vertical = 10.dp), Arrangement.spacedBy(6.dp)) {
                Told(entry)
                entry.strip?.let { StripPicture(it, Modifier.height(42.dp), small = true) }
                Care(entry.care)
            }
        }
        if (entry.others.isNotEmpty()) AddRow(entry.others, send)
    }
}

@Composable
private fun Told(entry: EntryRow) {
    val lettering = LocalLettering.current
    if (largeType()) {
        Column {
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp)) {
                Words(entry.time, lettering.action)
                Words(entry.amount, lettering.action, Modifier.weight(1f), align = TextAlign.End)
            }
            Words(entry.title, lettering.body)
            Words(entry.detail, lettering.label, soft = true)
            Words(entry.sides, lettering.label)
        }
        return
    }
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp), Alignment.Top) {
        Words(entry.time, lettering.action)
        Column(Modifier.weight(1f)) {
            Words(entry.title, lettering.body)
            Words(entry.detail, lettering.label, soft = true)
            Words(entry.sides, lettering.label)
        }
        Words(entry.amount, lettering.action, Modifier.weight(0.6f), align = TextAlign.End)
    }
}

@Composable
private fun Care(care: String) {
    if (care.isEmpty()) return
    Row(horizontalArrangement = Arrangement.spacedBy(8.dp), verticalAlignment = Alignment.CenterVertically) {
        SignPicture(Sign.CAUTION, size = 20.dp)
        Words(care, LocalLettering.current.label)
    }
}
