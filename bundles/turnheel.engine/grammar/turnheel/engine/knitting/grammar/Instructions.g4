/*
 * One sentence of a written pattern, without the label before it. The tokens come from the vocabulary table, not from
 * characters: which words mean KNIT or PLACE_MARKER is data. Shapes only: whether a combination means anything is asked by
 * whoever walks the tree.
 *
 * Brackets are balanced and their depth is bounded before the parser sees a sentence, and no decision looks further than a
 * sized value, so that reading takes linear time.
 */
parser grammar Instructions;

tokens {
    NUMBER, DASH, COMMA, SEMICOLON, COLON, SLASH, EQUALS, OPEN, CLOSE, STAR, AND, OR,
    KNIT, PURL, SLIP, WORK, STITCH, THROUGH_BACK, MANNER, CLOSED, STRETCHY, PROVISIONAL, WITH, EVEN, PATTERN,
    TWIN_STITCH, DOUBLE_STITCH, WRAPPED, WITH_WRAPS, WITH_TWIN, WITH_EDGE, CLOSING, WITH_WASTE, AGAIN, FREED, TURN,
    TO, FROM, FOR, ON, END, AROUND, ALL, EACH, LAST, THESE, NEXT, OTHER, AS, OVER, BEFORE, MARKER, GAP, STITCHES, HELD, UNTIL, REMAIN,
    REPEAT, TIMES, MORE, ONCE, TWICE, IN_ALL, EVERY, ENDING, ROUND, ROW, RIGHT_SIDE, WRONG_SIDE, NAME, STITCH_PATTERN,
    CAST_ON, BIND_OFF, GRAFT, DRAW, SEW, DOWN, PICK_UP, WHERE, CORNER, OPENING, PLACE_MARKER, SLIP_MARKER, REMOVE_MARKER, AFTER,
    HOLD, ON_HOLD, FLAT_ON, START_HERE, JOIN, TAKE_OUT_WASTE, TAKE_OUT_CAST_ON, NOTHING, HALF, NEEDLE, HAVE, CHANGED, MEASURES, UNIT, LESS,
    ALL_WORKED, WORD
}

/* How a round is called: by numbers, or by a name. */
label : ((ROUND | ROW) ranges (AND (ALL | EVERY) alternate)? | NAME) decoration* EOF ;
alternate : ~(OPEN | CLOSE | EOF)+ ;
decoration : RIGHT_SIDE | WRONG_SIDE | OPEN decorated CLOSE ;
decorated : (RIGHT_SIDE | WRONG_SIDE) (ROW | ROUND)? | (AND (ALL | EVERY) alternate) | NAME | ~CLOSE+ ;

sentence : AND? (pieces | result) (gap* result)* (COMMA | SEMICOLON | COLON | DASH)* EOF ;

/* A count and what it consists of, as in "the 29 instep sts in pattern: 4 repeats of 6 sts and 1 edge st, 4 plain sts". */
addition : other* sized other* STITCHES (other | needle)* COLON part ((COMMA | SEMICOLON | AND)+ part)* EOF ;
part : sized ((REPEAT | TIMES) sized)? other* STITCHES (other | needle)* ;
needle : NUMBER NEEDLE | (NEEDLE | REMAIN) NUMBER ;
other : ~(NUMBER | DASH | COMMA | SEMICOLON | COLON | SLASH | OPEN | CLOSE | AND | STITCHES | NEEDLE | REMAIN | REPEAT) ;

/* What is on the needle, or by how much that changed. */
result : OPEN result CLOSE | HAVE? ALL? sized (MORE | LESS)? STITCHES (CHANGED | REMAIN | ON | NEEDLE | ALL | IN_ALL)* ;
gap : COMMA | SEMICOLON | COLON | DASH | EQUALS | AND ;

pieces : piece (gap+ piece)* ;

piece
    : starred
    | group
    | plain
    | stitch
    | repeatRounds
    | asRound
    | patternRound
    | castOn
    | share
    | bindOff
    | graft
    | draw
    | sewDown
    | pickUp
    | marker
    | hold
    | startHere
    | join
    | takeOut
    | again
    | OR? measure
    | nothing
    ;

starred : STAR pieces gap* (REPEAT (FROM STAR+ (TO STAR)?)? | STAR (gap* REPEAT (FROM STAR+ (TO STAR)?)?)?) (gap* extent)? ;
group : OPEN pieces CLOSE (gap* REPEAT? extent | gap* REPEAT)? ;

/* How far, or how often, something goes on. */
extent : to | AROUND | IN_ALL | times | EACH STITCHES to? ;
to : (TO | UNTIL) place ;
place
    : END
    | LAST sized? STITCHES?
    | sized? STITCHES? BEFORE mark
    | sized STITCHES REMAIN
    | mark
    ;
mark : (NEXT | LAST | EACH)* (MARKER | GAP | WRAPPED | TWIN_STITCH | DOUBLE_STITCH | END) ;
times
    : sized (MORE? TIMES (MORE | IN_ALL)? | MORE)
    | (ONCE | TWICE) (MORE | IN_ALL)?
    | MORE (ONCE | TWICE)
    | TIMES sized
    ;

/* Knit, purl, slip or work: how much follows in any order, and is made sense of later. */
plain : (KNIT | PURL | SLIP | WORK) (THROUGH_BACK | manner)* amount* ;
amount
    : to (THROUGH_BACK | manner)*
    | AROUND
    | OR? measure
    | OPEN OR? length WHERE? CLOSE
    | FOR? (NEXT | ALL | EACH | LAST | THESE | OTHER | EVERY | REMAIN)* (sized MORE?)? noun
    | (NEXT | ALL | LAST)* sized
    | (NEXT | ALL | EACH | EVERY)+
    | THROUGH_BACK
    | manner
    | WITH_WRAPS | WITH_TWIN | WITH_EDGE | CLOSING | WITH_WASTE | EVEN | WHERE
    ;
noun : STITCHES HELD? | HELD STITCHES? | FREED | DOUBLE_STITCH | WRAPPED | TWIN_STITCH | ROUND | ROW | length ;
manner : MANNER | CLOSED | STRETCHY | PROVISIONAL | PATTERN | WITH CAST_ON | WITH BIND_OFF ;

stitch
    : TWIN_STITCH gap* TURN
    | DOUBLE_STITCH
    | TURN
    | STITCH manner* (extent | sized STITCHES?)?
    ;

castOn : CAST_ON (sized STITCHES? manner* | manner+ sized? STITCHES? | sized manner+ STITCHES) ;
share : sized STITCHES? ON (EACH (HALF | NEEDLE) | EACH? sized NEEDLE | HALF) ;
bindOff : BIND_OFF (ALL | REMAIN | LAST | NEXT)* sized? (REMAIN? STITCHES)? manner* ;
graft : GRAFT (ALL | REMAIN | LAST)* sized? (REMAIN? STITCHES)? (TO (OTHER | REMAIN)* sized HELD? STITCHES? | WHERE | manner)* ;
draw : DRAW (ALL | REMAIN | LAST)* sized? (REMAIN? STITCHES)? ;
sewDown : SEW (ALL | REMAIN | LAST)* sized? STITCHES? DOWN ;
pickUp : PICK_UP sized STITCHES? (WHERE | CORNER | OPENING)* ;
marker
    : PLACE_MARKER (AFTER (EACH | EVERY) sized? STITCHES? | EVERY sized? STITCHES)? (WHERE | manner)*
    | SLIP_MARKER
    | REMOVE_MARKER ALL?
    ;
hold
    : HOLD (NEXT | OTHER | REMAIN | LAST | THESE | ALL)* sized? STITCHES? (ON_HOLD | HELD | WHERE)*
    | SLIP (NEXT | OTHER | REMAIN | LAST | THESE | ALL)* sized STITCHES? ON_HOLD WHERE*
    | (OTHER | REMAIN)+ sized STITCHES (ON_HOLD | HELD)
    | FLAT_ON (NEXT | ALL | LAST | THESE | OTHER | REMAIN)* sized STITCHES?
    ;
startHere : START_HERE WHERE* ;
join : JOIN (ON? ALL? sized? STITCHES)? WHERE* ;
takeOut : TAKE_OUT_WASTE | TAKE_OUT_CAST_ON ;
again : AGAIN ;
nothing : NOTHING | WHERE | CORNER | manner ;

/* Like another round of the section. */
asRound : (WORK | KNIT)? AS which ;

/* A round of a stitch pattern that the text gives elsewhere, or goes on with. */
patternRound
    : WORK (((ROUND | ROW | NEXT)+ range?)? STITCH_PATTERN | (ROUND | ROW) range WORD+)
      (OVER? to | (OVER | AROUND | ON | FOR)? (NEXT | ALL | LAST | OTHER | REMAIN)* sized? STITCHES | AROUND)?
    ;

repeatRounds : (REPEAT | WORK) which (gap* howOften)? (gap* ending)? ;
which
    : NAME (gap+ NAME)*
    | (LAST | THESE) sized? (ROUND | ROW)
    | (ROUND | ROW) ranges
    ;
howOften
    : EVERY (sized | OTHER)? (ROUND | ROW) times?
    | times
    | UNTIL HAVE? sized STITCHES (REMAIN | ON | NEEDLE)*
    | ALL_WORKED
    | FOR sized MORE? (ROUND | ROW) MORE? (gap* OR measure)?
    | OR? measure
    ;
ending : ENDING (NAME | (ROUND | ROW) range | (RIGHT_SIDE | WRONG_SIDE) ROW) ;

/* Until something measures a length; what follows only says from where. */
measure : UNTIL ~(MEASURES | UNIT | EOF)* MEASURES length (~EOF)* ;
length : sized UNIT ((SLASH | OR) sized UNIT | OPEN sized UNIT CLOSE)? ;

/* A value for each size. */
sized : value (list | (SLASH value)+)? ;
value : NUMBER | DASH ;
list : (OPEN value (listGap value)* CLOSE value?)+ ;
listGap : COMMA | SEMICOLON | COLON | SLASH ;

ranges : range (OPEN range (listGap range)* CLOSE)* | range (SLASH range)+ | value COMMA value ;
range : value ((DASH | TO | AND) value)? ;
