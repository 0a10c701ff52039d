/*
 * One formula in the open spreadsheet notation, as far as numbers go: the precedence is that on which ECMA-376 and
 * OpenFormula agree. A sign binds before %, % before ^ (-2^2 is 4), and ^ groups to the left (2^3^2 is 64).
 *
 * No rule calls itself except through a parenthesis, so that whoever bounds those bounds the depth of the parser; and
 * two tokens always tell which way to go, so that reading takes linear time. Shapes only: which names are keys, which
 * are functions and how many arguments they take is not said here.
 */
grammar Formula;

formula : EQUAL? comparison EOF ;

comparison : sum (comparator sum)? ;
comparator : EQUAL | UNEQUAL | LESS_THAN | AT_MOST | AT_LEAST | MORE_THAN ;

sum : product ((PLUS | MINUS) product)* ;
product : power ((TIMES | DIVIDED_BY) power)* ;
power : signed (POWER signed)* ;
signed : (PLUS | MINUS)* percent ;
percent : atom PERCENT* ;
atom : NUMBER | NAME | call | OPEN comparison CLOSE ;
call : NAME OPEN (comparison ((COMMA | SEMICOLON) comparison)*)? CLOSE ;

PLUS : '+' ;
MINUS : '-' ;
TIMES : '*' ;
DIVIDED_BY : '/' ;
POWER : '^' ;
PERCENT : '%' ;
OPEN : '(' ;
CLOSE : ')' ;
COMMA : ',' ;
SEMICOLON : ';' ;
EQUAL : '=' ;
UNEQUAL : '<>' ;
AT_MOST : '<=' ;
AT_LEAST : '>=' ;
LESS_THAN : '<' ;
MORE_THAN : '>' ;

NUMBER : (DIGIT+ ('.' DIGIT*)? | '.' DIGIT+) ([eE] [+-]? DIGIT+)? ;
/* Wide enough for the names that a spreadsheet has and this notation has not (A1, $B$2, Sheet1.A1, CEILING.MATH). */
NAME : [\p{Letter}_$] [\p{Letter}\p{Mark}\p{Decimal_Number}_$.]* ;
/* Whole, so that a complaint names the whole of it. */
TEXT : '"' ~'"'* '"'? ;
SPACE : [ \t\r\n\u00A0]+ -> skip ;
/* Every other character, so that no text is without tokens. */
OTHER : . ;

fragment DIGIT : [0-9] ;
