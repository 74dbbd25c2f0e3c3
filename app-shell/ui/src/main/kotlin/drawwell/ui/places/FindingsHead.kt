package drawwell.ui.places

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.testTag
import androidx.compose.ui.unit.dp
import drawwell.surface.FindingsScreen
import drawwell.ui.look.LocalLettering
import drawwell.ui.parts.Figure
import drawwell.ui.parts.LargeWords
import drawwell.ui.parts.Words

/** The word of the moment; the figure under it, large where no dial shows it larger, and what it rests on. */
@Composable
internal fun FindingsHead(findings: FindingsScreen) {
    val lettering = LocalLettering.current
    Column(
        Modifier.fillMaxWidth().clearAndSetSemantics {
            contentDescription = findings.spoken
            testTag = "findings-head"
        },
        Arrangement.spacedBy(2.dp),
    ) {
        Words(findings.headline, lettering.headline)
        if (findings.figure.isNotEmpty() && findings.dial == null) {
            if (findings.figure.count(' '::equals) > WORDS) LargeWords(findings.figure) else Figure(findings.figure, "", "", large = lettering.word)
        }
        Words(findings.caption, lettering.caption, soft = true)
    }
}

/** More blanks than these, and it is no figure with its unit but words. */
private const val WORDS = 3
